import type { JSX } from 'preact';
import type { Mark, Picture } from './marks';

/** A short name that is the same on the server and in the browser, from the figure's own words. */
export function nameOf(words: string): string {
  let hash = 5381;
  for (const letter of words) hash = (hash * 33 + letter.charCodeAt(0)) >>> 0;
  return `fig-${hash.toString(36)}`;
}

function draw(mark: Mark, key: number): JSX.Element {
  if (mark.kind === 'path') return <path key={key} class={mark.role} d={mark.d} />;
  if (mark.kind === 'group') {
    return (
      <g key={key} class={mark.role}>
        {mark.marks.map(draw)}
      </g>
    );
  }
  const tone = mark.tone ? ` fig-${mark.tone}` : '';
  return (
    <text
      key={key}
      class={`fig-${mark.role}${tone}`}
      x={mark.x}
      y={mark.y}
      text-anchor={mark.anchor}
    >
      {mark.text}
    </text>
  );
}

/** Draws a figure's marks as SVG, on the server or live. `id` keeps two equal figures on a page apart. */
export function PictureView(props: { picture: Picture; id?: string; class?: string }): JSX.Element {
  const { picture } = props;
  const id = props.id ?? nameOf(picture.title + picture.description);
  return (
    <svg
      class={props.class ? `fig-svg ${props.class}` : 'fig-svg'}
      viewBox={[...(picture.corner ?? [0, 0]), picture.width, picture.height].join(' ')}
      role="img"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-desc`}
    >
      <title id={`${id}-title`}>{picture.title}</title>
      <desc id={`${id}-desc`}>{picture.description}</desc>
      {picture.marks.map(draw)}
    </svg>
  );
}
