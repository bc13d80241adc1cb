/** What to watch in this job, gravest first. */

import { Notice } from '../../result/Notice';
import { warningText } from '../../words/codes';
import { decimals, type Unit } from '../../words/format';
import { fill } from '../../words/template';
import { TEXT } from '../../words/en/calculators/torque/sentences';
import type { TorqueAnswer } from './state';

/** What running dry was counted at, and on what ground. */
function dryText({ study }: TorqueAnswer, unit: Unit): string {
  const { factor, measured } = study.fluid;
  if (factor === 1) return TEXT.dryNone;
  const words = measured ? TEXT.dryMeasured : TEXT.dryBorrowed;
  return fill(words, { factor: decimals(factor, 1) }, unit);
}

function readText({ study, read }: TorqueAnswer, unit: Unit): string {
  const factor = study.scale?.factor ?? 1;
  const torque = read?.torque ?? 0;
  const values = { model: torque / factor, read: torque, factor: decimals(factor, 2, 1) };
  return fill(TEXT.readText, values, unit);
}

export function Notices({ answer, unit }: { answer: TorqueAnswer; unit: Unit }) {
  const { load, stroke, fluid, read } = answer;
  return (
    <>
      {load.warnings.map((warning) => {
        const { level, title, text } = warningText(warning, unit);
        return (
          <Notice key={warning.code} level={level} title={title}>
            <p>{text}</p>
          </Notice>
        );
      })}
      {load.rubs && (
        <Notice level="amber" title={TEXT.rubsTitle}>
          <p>{TEXT.rubs}</p>
        </Notice>
      )}
      {stroke.crossed && (
        <Notice level="amber" title={TEXT.crossTitle}>
          <p>{TEXT.crossText}</p>
        </Notice>
      )}
      {fluid === 'dry' && (
        <Notice level="note" title={TEXT.dryTitle}>
          <p>{dryText(answer, unit)}</p>
        </Notice>
      )}
      {read && (
        <Notice level="note" title={TEXT.readTitle}>
          <p>{readText(answer, unit)}</p>
        </Notice>
      )}
    </>
  );
}
