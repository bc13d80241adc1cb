import type { ComponentChildren, JSX } from 'preact';
import { CHART } from '../words/en/charts/shared';

interface Props {
  /** The finding, and under it measure and conditions. */
  title: string;
  subtitle: string;
  /** What the bands cover, in words. */
  bands?: string | undefined;
  source: { text: string; href?: string };
  /** Why there is nothing to draw; stands where the chart would. */
  refusal?: string | undefined;
  children?: ComponentChildren;
}

/** Title, chart, what its bands mean, its numbers, its source. */
export function FigureFrame(props: Props): JSX.Element {
  const { title, subtitle, bands, source, refusal, children } = props;
  return (
    <figure class="fig fig-chart">
      <div class="fig-head">
        <p class="fig-finding">{title}</p>
        <p class="fig-measure">{subtitle}</p>
      </div>
      {refusal === undefined ? children : <p class="fig-refusal">{refusal}</p>}
      <figcaption>
        {bands && refusal === undefined && (
          <span class="fig-note">
            <b>{CHART.bands}</b>
            {bands}
          </span>
        )}
        <span class="fig-note">
          {CHART.source}
          {source.href ? <a href={source.href}>{source.text}</a> : source.text}
        </span>
      </figcaption>
    </figure>
  );
}
