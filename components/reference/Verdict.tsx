/** Inside, at risk, outside: the word with its sign. */

import type { DrillChoice } from '../../core/drill/drill';
import { Sign } from '../result/Sign';
import { VERDICTS } from '../words/en/reference';

export function Verdict({ verdict }: { verdict: DrillChoice['verdict'] }) {
  const { word, sign } = VERDICTS[verdict];
  return (
    <span class="verdict">
      <Sign level={sign} />
      {word}
    </span>
  );
}
