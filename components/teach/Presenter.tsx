/** The bar under the class screen: back, the screens, next, the link for the class, the instructor's notes. */

import { useEffect, useState } from 'preact/hooks';
import { TEACH } from '../words/en/teach';
import { fill } from '../words/template';
import type { Share } from './Share';
import { useDeck } from './useDeck';

export interface PresenterProps {
  /** What each screen is about, in order. */
  titles: readonly string[];
  /** Id of the notes, which the page holds as plain HTML. */
  notes: string;
}

/** The notes come and go with the address, so that the instructor's own screen can be bookmarked. */
function useNotes(id: string): [on: boolean, turn: () => void] {
  const [on, setOn] = useState(false);
  useEffect(() => setOn(new URLSearchParams(location.search).get('notes') === 'on'), []);
  useEffect(() => {
    const notes = document.getElementById(id);
    if (notes instanceof HTMLDetailsElement) {
      notes.hidden = !on;
      notes.open = on;
    }
    document.documentElement.classList.toggle('with-notes', on);
  }, [id, on]);
  const turn = () => {
    const query = new URLSearchParams(location.search);
    if (on) query.delete('notes');
    else query.set('notes', 'on');
    const text = query.toString();
    history.replaceState(null, '', `${location.pathname}${text && `?${text}`}${location.hash}`);
    setOn(!on);
  };
  return [on, turn];
}

export function Presenter({ titles, notes }: PresenterProps) {
  const deck = useDeck(titles.length);
  const [noted, turnNotes] = useNotes(notes);
  const [sharing, setSharing] = useState<string | null>(null);
  const [late, setLate] = useState<{ Share: typeof Share } | null>(null);
  const { at } = deck;
  useEffect(() => setSharing(null), [at]);
  const place = at ?? 0;
  const said = fill(TEACH.screenOf, { at: String(place + 1), count: String(titles.length) }, 'mm');
  const share = () => {
    const query = deck.moved ? deck.query() : '';
    const link = new URL(location.href);
    link.search = query;
    link.hash = `screen-${place + 1}`;
    setSharing(link.href);
    void import('./Share').then(setLate).catch(() => setSharing(null));
  };

  return (
    <nav class="deck-bar needs-script" aria-label={TEACH.screen}>
      {sharing !== null && late && <late.Share link={sharing} onClose={() => setSharing(null)} />}
      <div class="deck-row">
        <button
          type="button"
          class="button plain"
          aria-disabled={place === 0}
          onClick={() => deck.go('back')}
        >
          {TEACH.back}
        </button>
        <label class="deck-pick">
          <span class="unseen">{TEACH.screen}</span>
          <select
            value={String(place)}
            onChange={(event) => deck.goTo(Number(event.currentTarget.value))}
          >
            {titles.map((title, index) => (
              // Two screens may share a title; their place tells them apart.
              <option key={index} value={String(index)}>{`${index + 1}. ${title}`}</option>
            ))}
          </select>
        </label>
        <button
          type="button"
          class="button"
          aria-disabled={!deck.holding && place === titles.length - 1}
          onClick={() => deck.go('next')}
        >
          {deck.holding ? TEACH.showAnswer : TEACH.next}
        </button>
        <button type="button" class="link-button" aria-expanded={sharing !== null} onClick={share}>
          {TEACH.share}
        </button>
        <button type="button" class="link-button" aria-pressed={noted} onClick={turnNotes}>
          {noted ? TEACH.hideNotes : TEACH.notes}
        </button>
      </div>
      <p class="unseen" role="status">
        {at === null ? '' : `${said}: ${titles[place] ?? ''}`}
      </p>
    </nav>
  );
}
