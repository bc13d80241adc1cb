/** The set-up sheet: tools first, then each hole with its numbers, what to watch, blanks to fill in. */

import { Fragment } from 'preact';
import { torqueLimit } from '../../core/job/torque-limit';
import type { DrawingPlan } from '../../core/drawing/types';
import { cautionsFor } from '../planner/cautions';
import { nose } from '../planner/numbers';
import { worded } from '../planner/PlanNotices';
import { Sign } from '../result/Sign';
import {
  cautionText,
  drillName,
  feed,
  feedPerRev,
  gaugeText,
  length,
  materialName,
  NOT_A_RATING,
  rpm,
  threadPercent,
  torque,
  torqueBand,
  type Unit,
} from '../words';
import { holeMarks, questionShort, VERDICTS } from '../words/drawing';
import { HEAD_NAMES, type PartInputs } from './inputs';
import { FACTS } from '../words/en/numbers';
import { COLUMNS, LABELS, TEXT } from '../words/en/part';
import {
  holeNumber,
  madeHole,
  notReadText,
  reasons,
  type MadeHole,
} from '../words/en/partSentences';
import { Sections } from './Sections';
import { tapText } from './Tools';
import { say } from '../words/say';

export interface SheetProps {
  drawing: DrawingPlan;
  values: PartInputs;
  unit: Unit;
  example: boolean;
  /** Day it was made and version of the site; empty until a browser knows. */
  made: string;
}

function Head({ values, drawing, example }: SheetProps) {
  const materials = new Set(
    drawing.holes.flatMap(({ request }) => (request ? [materialName(request.material)] : [])),
  );
  return (
    <>
      {example && <p class="card-example">{TEXT.sheetExample}</p>}
      <header class="card-top">
        <h2>{values.part || TEXT.sheet}</h2>
        <p>
          {values.part && TEXT.sheet}
          <br />
          {[values.designation.trim(), [...materials].join('; ')]
            .filter((text) => text !== '')
            .join(' · ')}
        </p>
      </header>
      <dl class="card-blanks sheet-blanks">
        {HEAD_NAMES.map((name) => (
          <div key={name}>
            <dt>{LABELS[name]}</dt>
            <dd>{values[name]}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

/** `T1`, `D2`: how the rows call a tool of the list above them. */
function ToolList({ drawing }: { drawing: DrawingPlan }) {
  return (
    <ul class="sheet-tools">
      {drawing.drills.map(({ drill }, at) => (
        <li key={drill.name}>
          <strong>D{at + 1}</strong> {TEXT.drills.slice(0, -1)} {drillName(drill)}
        </li>
      ))}
      {drawing.taps.map((shared, at) => (
        <li key={shared.holes.join()}>
          <strong>T{at + 1}</strong> {tapText(drawing, shared)}
        </li>
      ))}
    </ul>
  );
}

/** The same depth from the face, where it counts from a counterbore's floor or a flat. */
function faceText(mm: number | undefined, unit: Unit): string {
  return mm === undefined ? '' : `; ${say(FACTS.fromFace, { depth: length(mm, unit) })}`;
}

function depthCells({ tap, request }: MadeHole, unit: Unit): [drill: string, beside: string] {
  const face = (mm: number | undefined) => faceText(mm, unit);
  if (request.hole.kind === 'through')
    return [COLUMNS.through, length(tap.depth.shoulder, unit) + face(tap.depth.fromFace?.shoulder)];
  const point = `${COLUMNS.point} ${length(tap.depth.point, unit)}`;
  return [length(tap.depth.shoulder, unit), point + face(tap.depth.fromFace?.shoulder)];
}

function letGo({ tap }: MadeHole): string {
  const limit = torqueLimit(tap);
  return limit ? say(TEXT.letGo, { band: torqueBand(limit.low, limit.high) }) : TEXT.tooNear;
}

interface HoleProps {
  drawing: DrawingPlan;
  /** 0-based among the drawing's holes. */
  index: number;
  unit: Unit;
}

/** Hand, insert, coating and what comes afterwards, in words; the tool that the table named. */
function Marks({ drawing, index, unit }: HoleProps) {
  const { plan, request, tool } = drawing.holes[index]!;
  const marks = plan?.ok && request ? holeMarks(plan.value.thread, request, unit) : [];
  const named = tool === undefined ? [] : [say(TEXT.tool, { number: tool })];
  if (marks.length + named.length === 0) return null;
  return (
    <small>
      <strong>{marks.join(', ')}</strong> {named.join('')}
    </small>
  );
}

/** What keeps a hole from being simply run, under its row: words not understood, questions still open. */
function OpenRow({ drawing, index, unit }: HoleProps) {
  const open = [
    notReadText(drawing.holes[index]!),
    ...drawing.questions
      .filter(({ hole }) => hole === index)
      .map((question) => questionShort(question, unit)),
  ].filter((text) => text !== '');
  if (open.length === 0 || !madeHole(drawing, index)) return null;
  return (
    <tr class="sheet-open">
      <td colSpan={8}>
        <Sign level="amber" /> {open.join(' ')}
      </td>
    </tr>
  );
}

function Row({ drawing, index, unit }: HoleProps) {
  const hole = drawing.holes[index]!;
  const made = madeHole(drawing, index);
  const name = hole.callout.ok ? hole.callout.value.thread : hole.line.trim();
  const count = hole.callout.ok ? hole.callout.value.count : 1;
  const head = (
    <>
      <td class="sheet-number">{holeNumber(drawing, index)}</td>
      <th scope="row">
        {count > 1 ? `${count} × ` : ''}
        {name}
        <Marks drawing={drawing} index={index} unit={unit} />
      </th>
    </>
  );
  if (!made) {
    return (
      <tr class="sheet-stop">
        {head}
        <td colSpan={6}>
          <Sign level="stop" /> <strong>{VERDICTS[hole.verdict]}.</strong> {TEXT.sheetNot}.{' '}
          {reasons(drawing, index, unit).join(' ')}
        </td>
      </tr>
    );
  }
  const { tap, plan } = made;
  const drill = drawing.drills.findIndex(({ holes }) => holes.includes(index));
  const number = drawing.taps.findIndex(({ holes }) => holes.includes(index));
  const [deep, beside] = depthCells(made, unit);
  return (
    <tr>
      {head}
      <td>
        {drill < 0 ? '' : `D${drill + 1} `}
        {tap.drill && (
          <small>{say(TEXT.shopBase, { percent: threadPercent(tap.drill.percent.shop) })}</small>
        )}
      </td>
      <td>
        {deep} <small>{beside}</small>
      </td>
      <td>
        T{number + 1} {TEXT.to} <strong class="unbroken">{length(tap.depth.tip, unit)}</strong>{' '}
        <small>
          {nose(made.request)}
          {faceText(tap.depth.fromFace?.tip, unit)}
        </small>
      </td>
      <td>{length(tap.depth.fullThread, unit)}</td>
      <td>
        {plan.cycle && (
          <>
            <span class="unbroken">{rpm(plan.cycle.rpm)}</span>{' '}
            <small>
              {feedPerRev(plan.cycle.feedPerRev, unit)}, {feed(plan.cycle.feedPerMinute, unit)}
            </small>
          </>
        )}
      </td>
      <td>
        {torque(tap.torque.expected)} <small>{letGo(made)}</small>
      </td>
    </tr>
  );
}

const HEADS = [
  COLUMNS.number,
  COLUMNS.hole,
  COLUMNS.drill,
  COLUMNS.drillTo,
  COLUMNS.tapTo,
  COLUMNS.full,
  COLUMNS.speed,
  COLUMNS.torque,
] as const;

function Watch({ drawing, unit }: { drawing: DrawingPlan; unit: Unit }) {
  const byText = new Map<
    string,
    { level: 'stop' | 'amber' | 'note'; text: string; holes: number[] }
  >();
  drawing.holes.forEach((hole, index) => {
    if (!madeHole(drawing, index) || !hole.plan?.ok) return;
    for (const { level, title, text } of worded(hole.plan.value, unit)) {
      if (level === 'note') continue;
      const said = byText.get(title + text) ?? { level, text: `${title}. ${text}`, holes: [] };
      said.holes.push(holeNumber(drawing, index));
      byText.set(title + text, said);
    }
  });
  if (byText.size === 0) return null;
  return (
    <section class="card-watch" aria-label={TEXT.watch}>
      {[...byText.values()].map(({ level, text, holes }) => (
        <p key={text}>
          <Sign level={level} />
          <span>
            <strong>
              {holes.length === 1 ? TEXT.oneNamed : TEXT.manyNamed} {holes.join(', ')}:
            </strong>{' '}
            {text}
          </span>
        </p>
      ))}
    </section>
  );
}

function Gauges({ drawing }: { drawing: DrawingPlan }) {
  const gauges = new Set(
    drawing.holes.flatMap(({ plan }, index) =>
      plan?.ok && madeHole(drawing, index) ? [gaugeText(plan.value.thread)] : [],
    ),
  );
  return (
    <p class="sheet-gauges">
      <strong>{COLUMNS.gauge}:</strong> {[...gauges].join(' · ')}
    </p>
  );
}

/** The usual cautions of every hole on the sheet, each named once. */
function cautions(drawing: DrawingPlan): string[] {
  const ids = drawing.holes.flatMap(({ request }) => (request ? cautionsFor(request) : []));
  return [...new Set(ids)].map((id) => cautionText(id).title);
}

export function Sheet(props: SheetProps) {
  const { drawing, unit, made } = props;
  return (
    <article class="card sheet" aria-label={TEXT.sheet}>
      <Head {...props} />
      <ToolList drawing={drawing} />
      <div class="sheet-scroll" tabIndex={0} role="region" aria-label={TEXT.sheetHoles}>
        <table class="sheet-holes">
          <thead>
            <tr>
              {HEADS.map((head) => (
                <th scope="col" key={head}>
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {drawing.holes.map((hole, index) =>
              hole.apart ? null : (
                <Fragment key={`${index} ${hole.line}`}>
                  <Row drawing={drawing} index={index} unit={unit} />
                  <OpenRow drawing={drawing} index={index} unit={unit} />
                </Fragment>
              ),
            )}
          </tbody>
        </table>
      </div>
      <Sections drawing={drawing} unit={unit} id={props.example ? 'example-' : 'sheet-'} />
      <Gauges drawing={drawing} />
      <Watch drawing={drawing} unit={unit} />
      <ul class="card-record sheet-record">
        {TEXT.record.map((name) => (
          <li key={name}>{name}</li>
        ))}
      </ul>
      <footer class="card-foot">
        <p>{TEXT.sheetDepths}</p>
        <p>
          <strong>{TEXT.cautions}:</strong> {cautions(drawing).join(' · ')}.
        </p>
        <p>
          <strong>{NOT_A_RATING.short}</strong> {NOT_A_RATING.defer} {made}
        </p>
      </footer>
    </article>
  );
}
