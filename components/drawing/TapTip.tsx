import type { ComponentChildren, JSX } from 'preact';
import { PictureView } from './PictureView';
import { tapTips, type TipModel } from './tipMarks';

interface Props {
  model: TipModel;
  id?: string;
  /** Caption. */
  children?: ComponentChildren;
}

/** Ends of taps to scale, chamfers side by side. */
export function TapTip({ model, id, children }: Props): JSX.Element {
  return (
    <figure class="fig fig-tips">
      <PictureView picture={tapTips(model)} {...(id ? { id } : {})} />
      {children && <figcaption>{children}</figcaption>}
    </figure>
  );
}
