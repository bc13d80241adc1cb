/** Finds a thread's page by typing it; without script the lists below it do. */

import { useEffect, useState } from 'preact/hooks';
import { TextField } from '../fields/TextField';
import { useEngine } from '../planner/useEngine';
import { FIND } from '../words/en/finder';
import { fill } from '../words/template';
import { threadName } from '../words/thread-address';
import type { Found, PageLink } from './find';
import type { FinderEngine } from './finderEngine';

const load = () => import('./finderEngine').then(({ engine }) => engine);

/** The links of the lists that stand on the page anyway: nothing is sent twice. */
function linksUnder(id: string): PageLink[] {
  const links = document.getElementById(id)?.querySelectorAll('a') ?? [];
  return [...links].map((link) => ({
    name: link.textContent ?? '',
    href: link.getAttribute('href') ?? '',
  }));
}

function Result({ found, engine }: { found: Found; engine: FinderEngine }) {
  const { page, near, special, relative } = found;
  const target = page ?? relative;
  return (
    <div class="found" aria-live="polite">
      {target && (
        <p>
          <a class="button" href={target.href}>
            {fill(FIND.open, { name: target.name }, 'mm')}
          </a>
        </p>
      )}
      {relative && <p>{FIND.relative}</p>}
      {special && (
        <p>
          {engine.reading(special)}. {FIND.special}{' '}
          <a href={`/calculators/thread-limits/?thread=${encodeURIComponent(special.designation)}`}>
            {fill(FIND.calculate, { name: threadName(special) }, 'mm')}
          </a>
        </p>
      )}
      {near.length > 0 && (
        <ul class="thread-list" aria-label={FIND.matches}>
          {near.map(({ name, href }) => (
            <li key={href}>
              <a href={href}>{name}</a>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

export function ThreadFinder({ list }: { list: string }) {
  const [typed, setTyped] = useState('');
  const [settled, setSettled] = useState(false);
  const [touched, setTouched] = useState(false);
  const [pages, setPages] = useState<PageLink[]>([]);
  useEffect(() => setPages(linksUnder(list)), [list]);
  const { engine } = useEngine(load, touched || typed !== '');
  const found = engine?.find(typed, pages) ?? null;
  const problem = found?.problems[0];
  const only = found?.near.length === 1 ? found.near[0] : undefined;
  const open = found?.page ?? found?.relative ?? only;
  return (
    <form
      class="thread-finder needs-script"
      noValidate
      autocomplete="off"
      onFocusIn={() => setTouched(true)}
      onSubmit={(event) => {
        event.preventDefault();
        setSettled(true);
        // The link itself is followed: it knows where the page lies, from a folder too.
        const links = '.found a.button, .found .thread-list a';
        if (open) event.currentTarget.querySelector<HTMLAnchorElement>(links)?.click();
      }}
    >
      <TextField
        name="find"
        label={FIND.label}
        hint={FIND.hint}
        large
        value={typed}
        onInput={(text) => {
          setTyped(text);
          setSettled(false);
        }}
        onSettle={() => setSettled(true)}
        reading={engine && found ? engine.notes(found.notes) : ''}
        {...(settled && engine && problem ? { problem: engine.problem(problem) } : {})}
      />
      {engine && found && <Result found={found} engine={engine} />}
    </form>
  );
}
