/** The causes, most likely first, with what speaks for each. */

import type { Diagnosis, RankedCause } from '../../core/diagnose/finder';
import { ShareBar } from '../result/ShareBar';
import { TROUBLE } from '../words/en/trouble';
import type { Unit } from '../words/format';
import { sourceMark } from '../words/sources';
import { answerText, causeText, planFactText } from '../words/trouble';

function Because({ cause, unit }: { cause: RankedCause; unit: Unit }) {
  const told = [
    ...cause.because.map(({ check, answer }) => answerText(check, answer)),
    ...cause.plan.map((fact) => planFactText(fact, unit)),
  ];
  if (told.length === 0) return null;
  return (
    <ul class="because-list">
      {told.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

export function Ranking({ diagnosis, unit }: { diagnosis: Diagnosis; unit: Unit }) {
  return (
    <section aria-labelledby="ranking-heading">
      <h3 id="ranking-heading">{TROUBLE.causes}</h3>
      <ol class="ranking">
        {diagnosis.ranked.map((each) => (
          <li key={each.cause}>
            <p>
              {causeText(each.cause, unit).name}{' '}
              <span class="quiet">({sourceMark(each.source)})</span>
            </p>
            <ShareBar sharp={each.share} />
            <Because cause={each} unit={unit} />
          </li>
        ))}
      </ol>
      <p class="quiet">{TROUBLE.causesNote}</p>
    </section>
  );
}
