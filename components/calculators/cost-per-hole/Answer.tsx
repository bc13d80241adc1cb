/** The cost of a hole: the sentence, the lines, the equation. */

import { AnswerLine } from '../../result/AnswerLine';
import { percent } from '../../words/format';
import type { ResultProps } from '../calculator';
import { calculatorHref } from '../../address/hrefs';
import { Ground } from '../Ground';
import {
  answerParts,
  LINES,
  money,
  sumText,
  TEXT,
} from '../../words/en/calculators/cost-per-hole/sentences';
import type { CostAnswer } from './state';

export function Result({ answer }: ResultProps<CostAnswer>) {
  const costs = answer.other ? [answer.cost, answer.other.cost] : [answer.cost];
  return (
    <>
      <AnswerLine parts={answerParts(answer)} />
      <section aria-labelledby="lines-heading">
        <h2 id="lines-heading">{TEXT.lines}</h2>
        <table class="rule">
          <thead>
            <tr>
              <th scope="col">{TEXT.line}</th>
              <th scope="col" class="number">
                {TEXT.plan}
              </th>
              {answer.other && (
                <th scope="col" class="number">
                  {TEXT.other}
                </th>
              )}
            </tr>
          </thead>
          <tbody>
            {LINES.map(({ key, name }) => (
              <tr key={key}>
                <th scope="row">{name}</th>
                {costs.map((cost, at) => (
                  <td class="number" key={at === 0 ? 'this' : 'other'}>
                    {money(cost[key])}
                    {cost.total > 0 && (
                      <small class="quiet"> {percent(cost[key] / cost.total)}</small>
                    )}
                  </td>
                ))}
              </tr>
            ))}
            <tr class="here">
              <th scope="row">{TEXT.total}</th>
              {costs.map((cost, at) => (
                <td class="number" key={at === 0 ? 'this' : 'other'}>
                  {money(cost.total)}
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">{TEXT.job}</th>
              {costs.map((cost, at) => (
                <td class="number" key={at === 0 ? 'this' : 'other'}>
                  {money(cost.job)}
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </section>
      <section aria-labelledby="equation-heading">
        <h2 id="equation-heading">{TEXT.equation}</h2>
        <p>{TEXT.equationText}</p>
        <p class="quiet">{sumText(answer)}</p>
      </section>
      <Ground
        assumed={TEXT.assumed}
        onward={[{ href: calculatorHref('speed-and-cycle', {}), label: TEXT.howLong }]}
      />
    </>
  );
}
