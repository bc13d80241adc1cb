import type { JSX } from 'preact';
import { PictureView } from '../drawing/PictureView';
import { limitBar, type LimitBarModel } from './limitBarMarks';

/** A tolerance bar with the words that belong under it. */
export function LimitBar(props: { bar: LimitBarModel; id: string; caption?: string }): JSX.Element {
  const { bar, id, caption } = props;
  return (
    <figure class="fig fig-bar">
      <PictureView picture={limitBar(bar)} id={id} />
      {caption && <figcaption>{caption}</figcaption>}
    </figure>
  );
}
