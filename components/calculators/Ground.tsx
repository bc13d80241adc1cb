/** What an answer took for granted, and where to go from it. */

import type { ComponentChildren } from 'preact';
import { TEXT } from '../words/en/calculators/shared';

export interface OnwardLink {
  href: string;
  label: string;
}

export interface GroundProps {
  assumed: readonly string[];
  onward: readonly OnwardLink[];
}

export function Ground({ assumed, onward }: GroundProps) {
  return (
    <div class="ground">
      <section class="assumed" aria-labelledby="assumed-heading">
        <h2 id="assumed-heading">{TEXT.assumed}</h2>
        <ul>
          {assumed.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </section>
      <section class="onward-links no-print" aria-labelledby="onward-heading">
        <h2 id="onward-heading">{TEXT.onward}</h2>
        <ul>
          {onward.map(({ href, label }) => (
            <li key={href}>
              <a href={href}>{label}</a>
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}

export interface WhyProps {
  lesson: string;
  /** Slugs of the lessons that exist: a link to one that does not helps nobody. */
  lessons: readonly string[];
  children?: ComponentChildren;
}

export function Why({ lesson, lessons, children }: WhyProps) {
  return lessons.includes(lesson) ? (
    <a class="no-print" href={`/lessons/${lesson}/`}>
      {children ?? TEXT.why}
    </a>
  ) : null;
}

/** What was asked, in one line: a printed sheet shows no form. */
export function Asked({ parts }: { parts: readonly string[] }) {
  return <p class="asked quiet">{parts.filter((part) => part !== '').join(' · ')}</p>;
}
