/** What to try, in order, with its cautions; what not to try, and what never. */

import { AnswerLine } from '../../result/AnswerLine';
import { Sign } from '../../result/Sign';
import { cautionText } from '../../words/cautions';
import type { ResultProps } from '../calculator';
import { Asked, Ground, Why } from '../Ground';
import {
  answerParts,
  askedParts,
  assumed,
  expectedText,
  FIRST,
  METHODS,
  NEVERS,
  REASONS,
  TEXT,
  timeText,
} from '../../words/en/calculators/tap-removal/sentences';
import type { RemovalAnswer } from './state';

function Ways({ answer }: { answer: RemovalAnswer }) {
  const ways = answer.choices.filter(({ verdict }) => verdict === 'try');
  return (
    <section aria-labelledby="ways-heading">
      <h2 id="ways-heading">{TEXT.ways}</h2>
      <ol>
        {ways.map((choice) => {
          const { name, how, cautions } = METHODS[choice.method];
          const welded = choice.method === 'turn-out' && answer.weldNut;
          return (
            <li key={choice.method}>
              <p>
                <strong>{name}.</strong> {how} {welded ? TEXT.nut : ''}{' '}
                <span class="quiet">
                  ({timeText(choice)}
                  {expectedText(choice)})
                </span>
              </p>
              {(welded ? ([...cautions, 'welding'] as const) : cautions).map((id) => {
                const { title, text } = cautionText(id);
                return (
                  <p key={id}>
                    <Sign level="amber" /> <strong>{title}.</strong> {text}
                  </p>
                );
              })}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Not({ answer }: { answer: RemovalAnswer }) {
  const others = answer.choices.filter(({ verdict }) => verdict === 'no');
  if (others.length === 0) return null;
  return (
    <section aria-labelledby="not-heading">
      <h2 id="not-heading">{TEXT.not}</h2>
      <ul>
        {others.map(({ method, reasons }) => (
          <li key={method}>
            <strong>{METHODS[method].name}</strong>:{' '}
            {reasons.map((reason) => REASONS[reason]).join('; ')}.
          </li>
        ))}
      </ul>
    </section>
  );
}

export function Result({ answer, lessons }: ResultProps<RemovalAnswer>) {
  return (
    <>
      <AnswerLine parts={answerParts(answer)} />
      <p class="because">
        <Why lesson="why-taps-break" lessons={lessons} />
      </p>
      <Asked parts={askedParts(answer)} />
      <section aria-labelledby="first-heading">
        <h2 id="first-heading">{TEXT.first}</h2>
        <ol>
          {FIRST.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ol>
      </section>
      <Ways answer={answer} />
      <Not answer={answer} />
      <section aria-labelledby="never-heading">
        <h2 id="never-heading">
          <Sign level="stop" /> {TEXT.never}
        </h2>
        <ul>
          {answer.never.map((id) => (
            <li key={id}>{NEVERS[id]}</li>
          ))}
        </ul>
      </section>
      <Ground
        assumed={assumed(answer)}
        onward={[
          { href: '/broken-taps/', label: TEXT.cause },
          { href: '/broken-taps/rework/', label: TEXT.rework },
        ]}
      />
    </>
  );
}
