/** One store, one set of rules: everything that is kept on a device is tried with every fault. */
import { describe, expect, test } from 'vitest';
import { EXAMPLE_JOB } from '../../components/jobs/examples';
import { JOBS } from '../../components/jobs/shape';
import { changed, keepChange } from '../../components/jobs/store';
import { answered, withLesson } from '../../components/review/progress';
import { SHELF } from '../../components/review/shape';
import { DEVICE } from '../../components/state/device';
import { readingsOf, withReading } from '../../components/state/readings';
import {
  changeShelf,
  clearShelf,
  forgetAside,
  openShelf,
  type Shelf,
  type Store,
} from '../../components/state/shelf';
import type { ShopReading } from '../../core/plan/learned';
import { memory } from '../tools/memory';

interface User<Contents> {
  shelf: Shelf<Contents>;
  /** Two changes that do not touch the same thing. */
  changes: [one: (kept: Contents) => Contents, two: (kept: Contents) => Contents];
  /** What is kept, in short; both changes leave `both`, the first alone `one`. */
  told: (kept: Contents) => string[];
  one: string[];
  both: string[];
  /** Texts as earlier versions left them on devices, and what they hold. */
  stored: [text: string, told: string[]][];
  later: string;
  damaged: string[];
}

const READING: ShopReading = {
  thread: 'M8x1.25-6H',
  material: 'stainless-austenitic',
  machine: 'VMC-A',
  taken: '2026-03-14',
  torque: 5.4,
  style: 'spiral-flute',
  chamfer: 'semi-bottoming',
  worn: false,
  hole: { kind: 'blind' },
  fullThread: 16,
};
const STORED_READING =
  '{"thread":"M8x1.25-6H","material":"stainless-austenitic","machine":"VMC-A","taken":"2026-03-14","torque":5.4,"style":"spiral-flute","chamfer":"semi-bottoming","worn":false,"hole":{"kind":"blind"},"fullThread":16}';

/** Typed with its own contents, then told apart by nothing but its behaviour. */
const user = <Contents>(kind: string, made: User<Contents>) =>
  [kind, made as unknown as User<unknown>] as const;

const reading = (machine: string) => (kept: typeof DEVICE.empty) =>
  withReading(kept, { ...READING, machine });
const job = (id: string) => (kept: typeof JOBS.empty) =>
  changed(kept, { kind: 'job', job: { ...EXAMPLE_JOB, id, part: id } }).contents;
const asked = (id: string) => (kept: typeof SHELF.empty) =>
  answered(kept, id, 20_000, 'remembered');

const DEVICE_DAMAGED = [
  'not json',
  'null',
  '[]',
  '{"version":1,"unit":"furlong"}',
  '{"unit":"mm"}',
];

const USERS = [
  user('the unit, beside a reading of another tab', {
    shelf: DEVICE,
    changes: [(kept) => ({ ...kept, unit: 'in' as const }), reading('VMC-A')],
    told: (kept) => [kept.unit ?? '', ...readingsOf(kept).map((each) => each.reading.machine)],
    one: ['in'],
    both: ['in', 'VMC-A'],
    stored: [
      ['{"version":1}', ['']],
      ['{"version":1,"unit":"in"}', ['in']],
      [`{"version":1,"unit":"mm","readings":[${STORED_READING}]}`, ['mm', 'VMC-A']],
    ],
    later: '{"version":7,"unit":"mm"}',
    damaged: DEVICE_DAMAGED,
  }),
  user('readings', {
    shelf: DEVICE,
    changes: [reading('VMC-A'), reading('VMC-B')],
    told: (kept) => readingsOf(kept).map((each) => each.reading.machine),
    one: ['VMC-A'],
    both: ['VMC-A', 'VMC-B'],
    stored: [[`{"version":1,"readings":[{"torque":5},${STORED_READING}]}`, ['VMC-A']]],
    later: '{"version":2,"readings":{"by":"machine"}}',
    damaged: ['{"version":1,"readings":"five"}', ...DEVICE_DAMAGED],
  }),
  user('jobs', {
    shelf: JOBS,
    changes: [job('Lid'), job('Body')],
    told: (kept) => kept.jobs.map(({ id }) => id),
    one: ['Lid'],
    both: ['Lid', 'Body'],
    stored: [
      [
        '{"format":"tapped-hole-handbook jobs","version":4,"jobs":[{"id":"job-1","revision":3,"job":"4471","part":"Lid","operation":"","machine":"VMC-B","holes":[{"inputs":{"thread":"M8","hole":"blind","depth":"16","material":"al-wrought"},"answer":{"version":"0.1.0","text":"Drill 6.8 mm."}}]}],"drawer":{"taps":[{"thread":"M8","style":"form","chamfer":"plug"}],"drills":[{"name":"6.8"}],"machines":[{"name":"VMC-B","drive":"synchronous","torque":30,"rpm":4000}]},"unread":[7]}',
        ['job-1'],
      ],
      [
        '{"format":"tapped-hole-handbook jobs","version":2,"jobs":[{"name":"4471","holes":["thread=M8"]}]}',
        ['older-1'],
      ],
    ],
    later: '{"format":"tapped-hole-handbook jobs","version":99,"jobs":"other"}',
    damaged: ['{', '{"format":"other"}', 'null'],
  }),
  user('review progress', {
    shelf: SHELF,
    changes: [asked('a/1'), asked('b/1')],
    told: (kept) => [...kept.lessons, ...Object.keys(kept.standings)],
    one: ['a/1'],
    both: ['a/1', 'b/1'],
    stored: [
      [
        '{"format":"tapped-hole-handbook review","version":1,"lessons":["drill"],"standings":{"drill/1":{"interval":2,"seen":20000,"due":20002}}}',
        ['drill', 'drill/1'],
      ],
    ],
    later: '{"format":"tapped-hole-handbook review","version":9,"all":"new"}',
    damaged: ['{', '{"format":"other"}', '[]'],
  }),
];

describe.each(USERS)('%s', (_, { shelf, changes, told, one, both, stored, later, damaged }) => {
  const [first, second] = changes;
  const at = (store: Store | null) => openShelf(store, shelf);
  const kept = (store: Store) => told(at(store).contents);

  test('comes back as it was kept', () => {
    const store = memory();
    expect(changeShelf(store, shelf, first)).toBe('kept');
    expect(kept(store)).toEqual(one);
    expect(at(store)).toMatchObject({ condition: 'good', aside: [] });
  });

  test('two tabs, each of which has read before the other wrote, keep both', () => {
    const store = memory();
    const [tab, other] = [at(store), at(store)];
    expect(tab).toEqual(other);
    changeShelf(store, shelf, first);
    changeShelf(store, shelf, second);
    expect(kept(store)).toEqual(both);
  });

  test('full: it says so and keeps what it had', () => {
    const roomy = memory();
    changeShelf(roomy, shelf, first);
    const store = memory(roomy.held.get(shelf.key)!.length);
    expect(changeShelf(store, shelf, first)).toBe('kept');
    expect(changeShelf(store, shelf, second)).toBe('full');
    expect(store.held).toEqual(roomy.held);
  });

  test('blocked, or none: it says so', () => {
    const throws = () => {
      throw new Error('SecurityError');
    };
    for (const store of [{ getItem: throws, setItem: throws, removeItem: throws }, null]) {
      expect(at(store)).toEqual({ contents: shelf.empty, condition: 'blocked', aside: [] });
      expect(changeShelf(store, shelf, first)).toBe('blocked');
      expect(clearShelf(store, shelf, [])).toBe('blocked');
    }
  });

  test('damaged: what stood there is set aside whole, each time, and once', () => {
    const store = memory();
    for (const text of [...damaged, damaged[0]!]) {
      store.setItem(shelf.key, text);
      expect(at(store).contents).toEqual(shelf.empty);
      expect(changeShelf(store, shelf, first)).toBe('kept');
      expect(kept(store)).toEqual(one);
    }
    expect(at(store).aside).toEqual(damaged);
    expect(damaged.length).toBeGreaterThan(2);
  });

  test('damaged, with no room to set it aside: nothing is written over it', () => {
    const broken = '{"broken":1';
    const store = memory(broken.length + 3);
    store.setItem(shelf.key, broken);
    expect(changeShelf(store, shelf, first)).toBe('full');
    expect(at(store)).toEqual({ contents: shelf.empty, condition: 'full', aside: [broken] });
    expect(store.held.get(shelf.key)).toBe(broken);
    // Once it was offered and is to be forgotten, there is room again.
    forgetAside(store, shelf.key, [broken]);
    expect(at(store)).toEqual({ contents: shelf.empty, condition: 'good', aside: [] });
  });

  test('of a later version: not touched, and what was set aside before is still offered', () => {
    const store = memory();
    store.setItem(shelf.key, damaged[0]!);
    at(store);
    store.setItem(shelf.key, later);
    expect(at(store)).toEqual({ contents: shelf.empty, condition: 'newer', aside: [damaged[0]] });
    expect(changeShelf(store, shelf, first)).toBe('newer');
    expect(clearShelf(store, shelf, [damaged[0]!])).toBe('newer');
    expect(store.held.get(shelf.key)).toBe(later);
    expect(at(store).aside).toEqual([damaged[0]]);
  });

  test('what an earlier version set aside is offered too, and first', () => {
    const store = memory();
    store.setItem(`${shelf.key}-set-aside`, 'old');
    store.setItem(shelf.key, damaged[0]!);
    expect(at(store).aside).toEqual(['old', damaged[0]]);
    forgetAside(store, shelf.key, ['old', damaged[0]!]);
    expect(store.held.size).toBe(0);
  });

  test('a text that another tab set aside meanwhile is not forgotten with the others', () => {
    const store = memory();
    store.setItem(shelf.key, damaged[0]!);
    const { aside } = at(store);
    store.setItem(shelf.key, damaged[1]!);
    at(store);
    forgetAside(store, shelf.key, aside);
    expect(at(store).aside).toEqual([damaged[0], damaged[1]]);
  });

  test('cleared, nothing of it is left; what others keep is', () => {
    const store = memory();
    store.setItem('another', 'text');
    store.setItem(shelf.key, damaged[0]!);
    changeShelf(store, shelf, first);
    expect(clearShelf(store, shelf, at(store).aside)).toBe('kept');
    expect([...store.held.keys()]).toEqual(['another']);
  });

  test.each(stored)('what is on devices today still opens: %.60s', (text, holds) => {
    const store = memory();
    store.setItem(shelf.key, text);
    expect(at(store)).toMatchObject({ condition: 'good', aside: [] });
    expect(kept(store)).toEqual(holds);
    // And a change writes nothing of it away.
    changeShelf(store, shelf, (contents) => contents);
    expect(kept(store)).toEqual(holds);
  });
});

test('the shelves do not share a key, or one that is set aside', () => {
  const store = memory();
  const shelves: Shelf<unknown>[] = [
    DEVICE as Shelf<unknown>,
    JOBS as Shelf<unknown>,
    SHELF as Shelf<unknown>,
  ];
  for (const shelf of shelves) store.setItem(shelf.key, `{${shelf.key}`);
  for (const shelf of shelves) expect(openShelf(store, shelf).aside).toEqual([`{${shelf.key}`]);
  expect(store.held.size).toBe(3);
});

test('a job says why it was not kept', () => {
  const wanted = { kind: 'job', job: EXAMPLE_JOB } as const;
  expect(keepChange(memory(10), wanted)).toEqual({ ok: false, why: 'full' });
  expect(keepChange(null, wanted)).toEqual({ ok: false, why: 'blocked' });
});

test('a lesson ticked in one tab and a question answered in another are both kept', () => {
  const store = memory();
  changeShelf(store, SHELF, (kept) => withLesson(kept, 'a', true));
  changeShelf(store, SHELF, asked('a/1'));
  const { contents } = openShelf(store, SHELF);
  expect([contents.lessons, Object.keys(contents.standings)]).toEqual([['a'], ['a/1']]);
});
