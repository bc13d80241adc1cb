/** The sheet that an address asks for, with what to do with it. */

import { useEngine } from '../planner/useEngine';
import { useAddress } from '../state/useAddress';
import { PRACTICE, SHEET } from '../words/en/practice';
import { PRACTICE_FIELDS, practiceHref } from './inputs';
import { useExampleGone } from './useExampleGone';

const loadEngine = () => import('./engine');

/** `example`: id of the sheet that the page holds as plain HTML until this one is made. */
export function Sheet({ example }: { example: string }) {
  const { values, read } = useAddress(PRACTICE_FIELDS, () => {});
  const { engine, failed } = useEngine(loadEngine, read);
  useExampleGone(example, engine !== null);
  const other = { ...values, key: values.key === 'yes' ? '' : 'yes' };
  return (
    <>
      <p class="actions no-print needs-script">
        <button type="button" class="button" onClick={() => window.print()}>
          {SHEET.print}
        </button>
        <a class="button plain" href={practiceHref('/practice/sheet/', other)}>
          {values.key === 'yes' ? SHEET.withoutKey : SHEET.withKey}
        </a>
        <a class="button plain" href={practiceHref('/practice/', values)}>
          {SHEET.back}
        </a>
      </p>
      {failed && !engine && <p role="alert">{PRACTICE.failed}</p>}
      {engine && <engine.SheetPaper values={values} />}
    </>
  );
}
