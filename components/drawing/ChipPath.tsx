import type { ComponentChildren, JSX } from 'preact';
import { chipPath, type ChipModel } from './chipMarks';
import { PictureView } from './PictureView';

interface Props {
  model: ChipModel;
  id?: string;
  /** Caption. */
  children?: ComponentChildren;
}

/** The cutting face turned, and the chip pushed ahead, drawn back or left in the flute. */
export function ChipPath({ model, id, children }: Props): JSX.Element {
  return (
    <figure class="fig fig-chips">
      <PictureView picture={chipPath(model)} {...(id ? { id } : {})} />
      {children && <figcaption>{children}</figcaption>}
    </figure>
  );
}
