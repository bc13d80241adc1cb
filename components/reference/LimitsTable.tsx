/** Limits of a thread in every class its standard holds; the page's own class stands out. */

import { Scroll } from '../calculators/Scroll';
import type { ThreadReference } from '../../core/plan/reference';
import { limitNumber, threadPercent, type Unit } from '../words';
import { HEADINGS, LIMITS } from '../words/en/reference';
import { fill } from '../words/template';
import { limitIn, limitPair } from './limits';

type Props = Pick<ThreadReference, 'thread' | 'basic' | 'limits' | 'classes' | 'window'> & {
  unit: Unit;
};

function percents(window: NonNullable<Props['window']>, base: 'shop' | 'iso'): string {
  const { min, max } = window.percent[base];
  return `${threadPercent(min).replace(' %', '')}–${threadPercent(max)}`;
}

export function LimitsTable({ thread, basic, limits, classes, window, unit }: Props) {
  if (!limits) return null;
  return (
    <>
      <Scroll label={HEADINGS.limits}>
        <table class="facts">
          <thead>
            <tr>
              <th scope="col">{LIMITS.class}</th>
              <th scope="col">{fill(LIMITS.minor, { unit }, unit)}</th>
              <th scope="col">{fill(LIMITS.pitch, { unit }, unit)}</th>
            </tr>
          </thead>
          <tbody>
            {classes.map((each) => (
              <tr key={each.class} class={each.class === thread.class ? 'chosen' : undefined}>
                <th scope="row">{each.class || thread.form}</th>
                <td>{limitPair(each.limits.minor, each.limits.unit, unit, LIMITS.open)}</td>
                <td>{limitPair(each.limits.pitch, each.limits.unit, unit, LIMITS.open)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p class="small">
        {fill(
          LIMITS.major,
          { major: `${limitIn(limits.majorMin, limits.unit, unit)} ${unit}` },
          unit,
        )}
        {fill(
          LIMITS.basic,
          {
            major: limitNumber(basic.major, unit),
            pitch: limitNumber(basic.pitch, unit),
            minor: `${limitNumber(basic.minor, unit)} ${unit}`,
          },
          unit,
        )}{' '}
        {window &&
          thread.system !== 'pipe' &&
          fill(
            LIMITS.percent,
            { class: thread.class, shop: percents(window, 'shop'), iso: percents(window, 'iso') },
            unit,
          )}
      </p>
    </>
  );
}
