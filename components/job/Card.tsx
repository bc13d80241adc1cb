/** One plan on one sheet of A4 or Letter, black on white: what the machine is set by and what is written back. */

import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import { HoleSection } from '../drawing/HoleSection';
import { cautionsFor } from '../planner/cautions';
import { worded } from '../planner/PlanNotices';
import { LABELS } from '../words/en/planner';
import { ShopLine } from '../planner/ShopLine';
import { CARD_NAMES, type Inputs } from '../planner/inputs';
import { AnswerLine } from '../result/AnswerLine';
import { Sign } from '../result/Sign';
import {
  answerSentence,
  assumptionText,
  becauseSentence,
  bestTap,
  cautionText,
  materialSaid,
  NOT_A_RATING,
  partSaid,
  remedyText,
  type Unit,
} from '../words';
import { CARD, RECORD } from '../words/en/card';
import { QrCode } from './QrCode';
import { cardRows, type CardRow } from './rows';

export interface CardProps {
  plan: HolePlan;
  request: HoleRequest;
  values: Inputs;
  unit: Unit;
  example: boolean;
  /** Words of the hole's callout that were not understood. */
  notRead?: readonly string[] | undefined;
  /** Where the live plan is; empty until a browser knows. */
  address: string;
  /** Day the card was made and version of the site. */
  made: string;
}

function Heading({ values, plan, request, example, unit }: CardProps) {
  const said = partSaid(plan, request, unit);
  return (
    <>
      {example && <p class="card-example">{CARD.example}</p>}
      <header class="card-top">
        <h2>{plan.thread.designation}</h2>
        <p>
          {CARD.title}
          <br />
          {[values.designation.trim(), materialSaid(request)]
            .filter((text) => text !== '')
            .join(' · ')}
        </p>
      </header>
      <dl class="card-blanks">
        {CARD_NAMES.map((name) => (
          <div key={name}>
            <dt>{LABELS[name]}</dt>
            <dd>{values[name]}</dd>
          </div>
        ))}
      </dl>
      {said.length > 0 && <p class="card-part">{said.join('; ')}</p>}
    </>
  );
}

/** Beyond so many letters a value is a sentence, not a number to read from two metres. */
const LONG = 30;

function CardTable({ rows }: { rows: readonly CardRow[] }) {
  return (
    <table>
      <tbody>
        {rows.map(({ name, value, beside }) => (
          <tr key={name} class={value.length > LONG ? 'wordy' : undefined}>
            <th scope="row">{name}</th>
            <td>
              <strong>{value}</strong>
              {beside && <small>{beside}</small>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Run({ plan, request, unit, tap, address }: CardProps & { tap: TapChoice }) {
  return (
    <section class="card-run" aria-label={CARD.run}>
      <CardTable rows={cardRows(plan, request, tap, unit)} />
      <div class="card-side">
        <HoleSection plan={plan} request={request} unit={unit} plain id="card-section" />
        <Live address={address} />
      </div>
    </section>
  );
}

function NotToRun({ plan, request, unit }: CardProps) {
  return (
    <section class="card-stop">
      <h3>
        <Sign level="stop" /> {CARD.stop}
      </h3>
      <AnswerLine parts={answerSentence(plan, request, unit)} />
      <p>{becauseSentence(plan, request, unit)}</p>
      <ol>
        {plan.remedies.map((remedy) => {
          const { title, text } = remedyText(remedy, unit);
          return (
            <li key={remedy.code}>
              <strong>{title}.</strong> {text}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Watch({ plan, unit, notRead }: CardProps) {
  const notices = worded(plan, unit, notRead);
  if (notices.length === 0) return null;
  const many = notices.length > 3;
  return (
    <section class={many ? 'card-watch many' : 'card-watch'} aria-label={CARD.watch}>
      {notices.map(({ code, level, title, text }) => (
        <p key={code}>
          <Sign level={level} />
          <span>
            <strong>{title}.</strong> {text}
          </span>
        </p>
      ))}
    </section>
  );
}

function Record() {
  return (
    <section aria-label={CARD.record}>
      <ul class="card-record">
        {RECORD.map((name) => (
          <li key={name}>{name}</li>
        ))}
      </ul>
    </section>
  );
}

function Live({ address }: { address: string }) {
  if (!address) return null;
  return (
    <div class="card-live">
      <QrCode text={address} label={CARD.qr} />
      <p class="card-address">
        <strong>{CARD.address}</strong> {address}
      </p>
    </div>
  );
}

/** What is taken for granted of the part around the hole; where little was said of it, one line stands for the rest. */
const PLAIN: readonly string[] = [
  'entry-square',
  'crossing-none',
  'counterbore-none',
  'drilled-solid',
  'later-none',
  'duty-none',
];

function assumed({ plan, unit }: CardProps): string {
  const plain = plan.assumptions.filter(({ code }) => PLAIN.includes(code)).length >= 4;
  const said = plan.assumptions
    .filter(({ code }) => !plain || !PLAIN.includes(code))
    .map((assumption) => assumptionText(assumption, unit));
  return [...said, ...(plain ? [CARD.plainHole] : [])].join(' · ');
}

function Foot(props: CardProps) {
  const { request, made } = props;
  return (
    <footer class="card-foot">
      <p>
        <strong>{CARD.assumed}:</strong> {assumed(props)}
      </p>
      <p>
        <strong>{CARD.cautions}:</strong>{' '}
        {cautionsFor(request)
          .map((id) => cautionText(id).title)
          .join(' · ')}
        . {NOT_A_RATING.defer}
      </p>
      <p>
        <strong>{NOT_A_RATING.short}</strong> {made}
      </p>
    </footer>
  );
}

export function Card(props: CardProps) {
  const tap = bestTap(props.plan);
  return (
    <article class={`card${props.example ? ' card-is-example' : ''}`}>
      <Heading {...props} />
      {tap ? <Run {...props} tap={tap} /> : <NotToRun {...props} />}
      <ShopLine {...props} printed />
      <Watch {...props} />
      {tap ? <Record /> : <Live address={props.address} />}
      <Foot {...props} />
    </article>
  );
}
