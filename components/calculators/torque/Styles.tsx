/** Every style of tap in the same hole, torque and shares side by side. */

import { percent, torque, torqueBand, type Unit } from '../../words/format';
import { styleName } from '../../words/names';
import { Scroll } from '../Scroll';
import { TEXT } from '../../words/en/calculators/torque/sentences';
import type { TorqueAnswer } from './state';

export function Styles({ answer, unit }: { answer: TorqueAnswer; unit: Unit }) {
  const spindle = answer.load.spindle !== undefined;
  return (
    <section>
      <h2>{TEXT.styles}</h2>
      <p>{TEXT.stylesText}</p>
      <Scroll label={TEXT.styles}>
        <table class="rule">
          <thead>
            <tr>
              <th scope="col">{TEXT.style}</th>
              <th scope="col" class="number">
                {TEXT.sharp}
              </th>
              <th scope="col" class="number">
                {TEXT.band}
              </th>
              <th scope="col" class="number">
                {TEXT.share}
              </th>
              {spindle && (
                <th scope="col" class="number">
                  {TEXT.ofSpindle}
                </th>
              )}
            </tr>
          </thead>
          <tbody>
            {answer.loads.map((load) => (
              <tr key={load.style} class={load === answer.load ? 'chosen' : undefined}>
                <th scope="row">{styleName(load.style)}</th>
                <td class="number">{torque(load.torque.expected, unit)}</td>
                <td class="number">{torqueBand(load.torque.low, load.torque.high, unit)}</td>
                <td class="number">{percent(load.share.worn)}</td>
                {load.spindle && <td class="number">{percent(load.spindle.worn)}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}
