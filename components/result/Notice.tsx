/** A warning or note: sign, title, what to do. The level is said in a word as well as shown. */

import type { ComponentChildren } from 'preact';
import type { Level } from '../words';
import { LEVELS } from '../words/en/fields';
import { Sign } from './Sign';

export interface NoticeProps {
  level: Level;
  title: string;
  id?: string;
  children: ComponentChildren;
}

export function Notice({ level, title, id, children }: NoticeProps) {
  return (
    <div class={`notice ${level}`} id={id} tabIndex={id ? -1 : undefined}>
      <p class="notice-title">
        <Sign level={level} />
        <span>
          <span class="notice-level">{LEVELS[level]}.</span> {title}
        </span>
      </p>
      <div class="notice-text">{children}</div>
    </div>
  );
}
