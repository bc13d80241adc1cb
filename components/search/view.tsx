/** The search: a field, and what it finds. Without script the list under it still leads everywhere. */

import { useRef, useState } from 'preact/hooks';
import { useEngine } from '../planner/useEngine';
import { Announcer } from '../state/Announcer';
import { useAddress } from '../state/useAddress';
import { KIND_NAMES, SEARCH } from '../words/en/search';
import { fill } from '../words/template';
import { hrefOf, LONGEST, type Match } from './find';

const FIELDS = [{ name: 'q', initial: '' }] as const;
const load = () => import('./engine').then(({ loadEngine }) => loadEngine());

function Result({ match }: { match: Match }) {
  const { title, thread, kind, note } = match;
  return (
    <li>
      <a href={hrefOf(match)}>
        <span class="found-title">
          {thread === undefined ? title : fill(SEARCH.withThread, { title, thread }, 'mm')}
        </span>
        <span class="found-kind">{KIND_NAMES[kind]}</span>
        {note !== '' && <span class="found-note">{note}</span>}
      </a>
    </li>
  );
}

function countText(count: number, typed: string): string {
  if (count === 0) return fill(SEARCH.none, { typed }, 'mm');
  return count === 1 ? SEARCH.foundOne : fill(SEARCH.found, { count }, 'mm');
}

/** Up and down through the field and the links under it. */
function onArrows(event: KeyboardEvent & { currentTarget: HTMLElement }): void {
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const stops = [...event.currentTarget.querySelectorAll<HTMLElement>('input, .found-list a')];
  const at = stops.indexOf(document.activeElement as HTMLElement);
  const next = stops[at + (event.key === 'ArrowDown' ? 1 : -1)];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

export function Search() {
  const [wanted, setWanted] = useState(false);
  const box = useRef<HTMLInputElement>(null);
  // Whoever comes to this page with nothing asked yet wants to type.
  const { values, set, settle } = useAddress(FIELDS, ({ q }) => {
    if (q === '' && document.activeElement === document.body) box.current?.focus();
  });
  const typed = values.q.trim();
  const { engine, failed } = useEngine(load, wanted || typed !== '');
  const long = typed.length > LONGEST;
  const matches = engine && typed !== '' && !long ? engine.find(typed) : null;
  const told = long ? SEARCH.tooLong : failed ? SEARCH.failed : '';
  return (
    // The arrow keys are a convenience on top of links that Tab reaches anyway.
    // eslint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
    <form
      class="search needs-script"
      role="search"
      noValidate
      autocomplete="off"
      onKeyDown={onArrows}
      onFocusIn={() => setWanted(true)}
      onSubmit={(event) => {
        event.preventDefault();
        settle();
        event.currentTarget.querySelector<HTMLElement>('.found-list a')?.focus();
      }}
    >
      <div class="field large">
        <label for="search-field">{SEARCH.label}</label>
        <p class="hint" id="search-hint">
          {SEARCH.hint}
        </p>
        <div class="box">
          <input
            ref={box}
            id="search-field"
            name="q"
            type="search"
            value={values.q}
            enterkeyhint="search"
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            aria-describedby="search-hint search-keys"
            onInput={(event) => set({ q: event.currentTarget.value })}
            onChange={settle}
          />
        </div>
        <p class="hint" id="search-keys">
          {SEARCH.keys}
        </p>
      </div>
      {told !== '' && <p class="notice amber">{told}</p>}
      {matches && (
        <section aria-label={SEARCH.matches}>
          <p class="quiet">{countText(matches.length, typed)}</p>
          <ol class="found-list">
            {matches.map((match) => (
              <Result key={hrefOf(match)} match={match} />
            ))}
          </ol>
        </section>
      )}
      <Announcer text={told || (matches ? countText(matches.length, typed) : '')} />
    </form>
  );
}
