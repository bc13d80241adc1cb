/** The finder as it is read and clicked: its address, its questions, its end; every text filled in. */

import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { CAUSE_IDS } from '../../core/diagnose/causes';
import { answersOf, CHECK_IDS } from '../../core/diagnose/checks';
import { CANNOT_CHECK } from '../../core/diagnose/finder';
import { SYMPTOM_IDS } from '../../core/diagnose/symptoms';
import { flatten } from '../../components/drawing/marks';
import { SMALL } from '../../components/drawing/symptomParts';
import { symptomPicture } from '../../components/drawing/symptoms';
import { FIELDS as HOLE_FIELDS } from '../../components/planner/inputs';
import { initialValues, readAddress } from '../../components/state/address';
import { ownPlan } from '../../components/trouble/engine';
import {
  FIELDS,
  readSaid,
  readTried,
  withAnswer,
  withTried,
} from '../../components/trouble/inputs';
import { Finder } from '../../components/trouble/view';
import { SYMPTOM_WORDS } from '../../components/words/en/symptoms';
import { TROUBLE } from '../../components/words/en/trouble';
import { answerText, causeText, checkText, planFactText } from '../../components/words/trouble';

afterEach(cleanup);
beforeEach(() => history.replaceState(null, '', '/broken-taps/'));

describe('words', () => {
  test('every cause, check and answer is said in full, in both units', () => {
    for (const unit of ['mm', 'in'] as const) {
      const said = [
        ...CAUSE_IDS.flatMap((id) => Object.values(causeText(id, unit))),
        ...CHECK_IDS.flatMap((id) => Object.values(checkText(id, unit))),
        ...CHECK_IDS.flatMap((id) => answersOf(id).map((answer) => answerText(id, answer))),
      ];
      for (const text of said) {
        expect(text).toMatch(/\S{2}/);
        expect(text).not.toMatch(/[{}]|undefined|not known/);
      }
    }
    expect(answerText('nose', CANNOT_CHECK)).toContain('cannot');
  });

  test('no two causes, and no two answers of a check, read alike', () => {
    expect(new Set(CAUSE_IDS.map((id) => causeText(id, 'mm').name)).size).toBe(CAUSE_IDS.length);
    for (const id of CHECK_IDS) {
      const answers = answersOf(id).map((answer) => answerText(id, answer));
      expect(new Set(answers).size).toBe(answers.length);
    }
  });
});

describe('pictures', () => {
  test.each(SYMPTOM_IDS)('%s is drawn inside its frame', (id) => {
    const { marks, title, description } = symptomPicture(id);
    expect(title).toBe(SYMPTOM_WORDS[id].name);
    expect(description).toMatch(/\.$/);
    const all = flatten(marks);
    expect(all.length).toBeGreaterThan(1);
    for (const mark of all) {
      if (mark.kind !== 'path') continue;
      expect(mark.d).not.toMatch(/NaN|undefined/);
      if (mark.role === 'sy-lump') continue;
      for (const [, x, y] of mark.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(-3);
        expect(Number(x)).toBeLessThanOrEqual(SMALL.width + 3);
        expect(Number(y)).toBeGreaterThanOrEqual(-3);
        expect(Number(y)).toBeLessThanOrEqual(SMALL.height + 5);
      }
    }
  });

  test('no two are the same drawing', () => {
    const drawn = SYMPTOM_IDS.map((id) => JSON.stringify(symptomPicture(id).marks));
    expect(new Set(drawn).size).toBe(SYMPTOM_IDS.length);
  });
});

describe('the address', () => {
  test('answers go out and come back; what is unknown is left out', () => {
    const said = withAnswer(withAnswer('', 'nose', 'shiny'), 'bottom-chips', CANNOT_CHECK);
    expect(readSaid(said)).toEqual([
      { check: 'nose', answer: 'shiny' },
      { check: 'bottom-chips', answer: CANNOT_CHECK },
    ]);
    expect(readSaid('nose.purple,tarot.death,nose.clean,nose.shiny')).toEqual([
      { check: 'nose', answer: 'shiny' },
    ]);
    expect(withAnswer(said, 'nose', null)).toBe(`bottom-chips.${CANNOT_CHECK}`);
    expect(readTried(withTried('gremlins', 'overrun', true))).toEqual(['overrun']);
    expect(withTried('overrun', 'overrun', false)).toBe('');
  });

  test('the planner’s own address opens the same hole here', () => {
    const search = '?thread=M10&hole=blind&depth=15&limit=16.5&material=al-wrought';
    expect(readAddress(search, FIELDS).notes).toEqual([]);
    for (const { name } of HOLE_FIELDS)
      expect(FIELDS.some((each) => each.name === name)).toBe(true);
  });
});

describe('the plan’s own numbers', () => {
  const hole = (changes: object) => ({ ...initialValues(FIELDS), ...changes });
  const cover = {
    thread: 'M10',
    hole: 'blind',
    depth: '15',
    limit: '16.5',
    material: 'al-wrought',
    tap: 'spiral-flute',
    chamfer: 'semi-bottoming',
  };

  test('are said with their units', () => {
    const { facts, problems } = ownPlan(hole(cover), 'mm');
    expect(problems).toEqual([]);
    const said = facts.map((fact) => planFactText(fact, 'mm')).join(' ');
    expect(said).toContain('Room below the thread: 1 pitch. This tap wants 4 pitches');
    expect(said).toMatch(/Range for this metal: \d+ rev\/min to/);
    expect(said).not.toMatch(/[{}]|not known/);
  });

  test('a hole that cannot be planned, and a speed that is none, are told at their fields', () => {
    const missing = ownPlan(hole({ thread: 'M10' }), 'mm');
    expect(missing.facts).toEqual([]);
    expect(missing.problems.map(({ field }) => field)).toContain('material');
    const slow = ownPlan(hole({ ...cover, ran: 'fast' }), 'mm');
    expect(slow.problems.map(({ field }) => field)).toEqual(['ran']);
  });
});

/** The check that is asked on the page now. */
function nextCheck() {
  const asked = document.getElementById('check-heading')?.textContent;
  return CHECK_IDS.find((id) => checkText(id, 'mm').ask === asked);
}

describe('the page', () => {
  test('from what is seen over two checks to a change, and back', async () => {
    render(<Finder />);
    fireEvent.click(screen.getByRole('button', { name: SYMPTOM_WORDS['broke-bottom'].name }));
    await screen.findByText(TROUBLE.check);
    await waitFor(() => expect(document.activeElement?.id).toBe('check-heading'));
    let asked = 0;
    for (let check = nextCheck(); check; check = nextCheck()) {
      // Whoever has a crushed centre before them finds nothing else out of order.
      const said = check === 'nose' ? 'crushed' : answersOf(check).at(-1)!;
      fireEvent.click(screen.getByRole('button', { name: answerText(check, said) }));
      asked += 1;
    }
    expect(asked).toBeGreaterThan(1);
    expect(document.activeElement?.id).toBe('change-heading');
    expect(screen.getByText(TROUBLE.tryThis)).toBeTruthy();
    expect(
      screen.getByRole('heading', { name: causeText('centre-not-counted', 'mm').name }),
    ).toBeTruthy();
    expect(location.search).toContain('nose.crushed');
    fireEvent.click(screen.getByRole('button', { name: TROUBLE.tried }));
    expect(
      screen.queryByRole('heading', { name: causeText('centre-not-counted', 'mm').name }),
    ).toBeNull();
    fireEvent.click(screen.getByRole('button', { name: new RegExp(`^${TROUBLE.undo}`) }));
    const nose = `${TROUBLE.change}: ${checkText('nose', 'mm').ask}`;
    fireEvent.click(screen.getByRole('button', { name: nose }));
    expect(location.search).not.toContain('nose.crushed');
    fireEvent.click(screen.getByRole('button', { name: TROUBLE.other }));
    expect(location.search).toBe('');
    expect(screen.getByRole('heading', { name: TROUBLE.choose })).toBeTruthy();
  });

  test('tells where every cause was tried', async () => {
    history.replaceState(
      null,
      '',
      '/broken-taps/?symptom=tight-after-coating&tried=no-allowance,thick-plate',
    );
    render(<Finder />);
    expect(await screen.findByText(TROUBLE.nothing)).toBeTruthy();
  });
});
