/** What a page says of its keeping: not saved, with the file; asked before anything is cleared. */
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { EXAMPLE_JOB } from '../../components/jobs/examples';
import { JobView } from '../../components/jobs/JobView';
import { JOBS, type Contents } from '../../components/jobs/shape';
import { useJobs } from '../../components/jobs/useJobs';
import { Clear } from '../../components/state/Clear';
import { Keeping } from '../../components/state/Keeping';
import { changeShelf, openShelf } from '../../components/state/shelf';
import { UnitSwitch } from '../../components/state/UnitSwitch';
import { KEEPING } from '../../components/words/en/keeping';
import { FIELDS_OF_JOB, TEXT } from '../../components/words/en/jobs';
import { UNITS } from '../../components/words/en/fields';

beforeEach(() => window.localStorage.clear());
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

const press = (name: string) => fireEvent.click(screen.getByRole('button', { name }));

/** From now on the browser has no room left, or lets nobody near its store. */
function fault(kind: 'full' | 'blocked') {
  const { localStorage } = window;
  const refuse = () => {
    throw new Error(kind);
  };
  const get = (key: string) => localStorage.getItem(key);
  const broken = { getItem: kind === 'full' ? get : refuse, setItem: refuse, removeItem: refuse };
  return vi.spyOn(window, 'localStorage', 'get').mockReturnValue(broken as unknown as Storage);
}

/** The page of jobs, as far as keeping goes. */
function Page({ onSave }: { onSave: (contents: Contents) => void }) {
  const jobs = useJobs();
  const [job] = jobs.contents.jobs;
  const add = () => jobs.change({ kind: 'job', job: { ...EXAMPLE_JOB, id: 'new', part: 'New' } });
  return (
    <>
      <Keeping kept={jobs} name="jobs" onSave={onSave} />
      <p role="status">{jobs.said}</p>
      <button type="button" onClick={add}>
        Add
      </button>
      {job && (
        <JobView
          {...{ job, unit: 'mm', made: '', printing: false }}
          onChange={(next) => jobs.change({ kind: 'job', job: next, seen: job.revision })}
        />
      )}
      <Clear
        label={TEXT.clear}
        ask={TEXT.clearAsk}
        onSave={() => onSave(jobs.contents)}
        onClear={jobs.clear}
      />
    </>
  );
}

const saver = () => vi.fn<(contents: Contents) => void>();
const keepOne = () =>
  changeShelf(window.localStorage, JOBS, (kept) => ({ ...kept, jobs: [EXAMPLE_JOB] }));
const partsIn = (onSave: ReturnType<typeof saver>) =>
  onSave.mock.lastCall![0].jobs.map(({ part }) => part);

describe('jobs', () => {
  test.each([
    ['full', [EXAMPLE_JOB.part, 'New']],
    ['blocked', ['New']],
  ] as const)('%s: it is said, and the file holds what could not be kept', async (kind, parts) => {
    keepOne();
    fault(kind);
    const onSave = saver();
    render(<Page onSave={onSave} />);
    press('Add');
    expect(screen.getByRole('status').textContent).toContain(KEEPING.unsaved);
    expect(await screen.findByText(KEEPING[kind])).toBeTruthy();
    press(KEEPING.save);
    expect(partsIn(onSave)).toEqual(parts);
  });

  test('what was typed and could not be kept stays in its field, and is kept once there is room', async () => {
    keepOne();
    const onSave = saver();
    render(<Page onSave={onSave} />);
    const field = async () =>
      (await screen.findByLabelText(FIELDS_OF_JOB.part)) as HTMLInputElement;
    await field();
    const full = fault('full');
    fireEvent.input(await field(), { target: { value: 'Cover' } });
    fireEvent.change(await field());
    expect((await field()).value).toBe('Cover');
    press(KEEPING.save);
    expect(partsIn(onSave)).toEqual(['Cover']);
    full.mockRestore();
    fireEvent.change(await field());
    expect(openShelf(window.localStorage, JOBS).contents.jobs[0]?.part).toBe('Cover');
    expect(screen.queryByText(KEEPING.unsaved)).toBeNull();
  });

  test('what could not be read is offered, and forgotten when told to', async () => {
    window.localStorage.setItem(JOBS.key, '{half');
    render(<Page onSave={saver()} />);
    expect(await screen.findByRole('button', { name: KEEPING.asideSave })).toBeTruthy();
    press(KEEPING.asideForget);
    expect(screen.queryByText(KEEPING.aside)).toBeNull();
    expect(window.localStorage.length).toBe(0);
  });

  test('clearing asks first and offers the file', async () => {
    keepOne();
    const onSave = saver();
    render(<Page onSave={onSave} />);
    await screen.findByLabelText(FIELDS_OF_JOB.part);
    press(TEXT.clear);
    expect(screen.getByText(TEXT.clearAsk)).toBeTruthy();
    press(KEEPING.save);
    expect(partsIn(onSave)).toEqual([EXAMPLE_JOB.part]);
    press(KEEPING.leave);
    expect(openShelf(window.localStorage, JOBS).contents.jobs).toHaveLength(1);
    press(TEXT.clear);
    press(KEEPING.clearSure);
    expect(window.localStorage.length).toBe(0);
    expect(screen.getByRole('status').textContent).toBe(TEXT.removed);
  });
});

test('a unit that is not remembered is shown all the same, and it says so', async () => {
  const full = fault('full');
  render(<UnitSwitch />);
  fireEvent.click(screen.getByLabelText(UNITS.in));
  expect(await screen.findByText(UNITS.notSaved)).toBeTruthy();
  full.mockRestore();
  fireEvent.click(screen.getByLabelText(UNITS.mm));
  expect(screen.queryByText(UNITS.notSaved)).toBeNull();
});
