/** The drawer: lines on the left, how each was read below, kept at a press. */

import { useMemo, useState } from 'preact/hooks';
import { FileButton } from '../fields/FileButton';
import { TextArea } from '../fields/TextArea';
import { Sign } from '../result/Sign';
import { Keeping } from '../state/Keeping';
import { saveFile } from '../state/saveFile';
import { useEngine } from '../planner/useEngine';
import { Notice } from '../result/Notice';
import { TEXT } from '../words/en/jobs';
import { saveJobs } from './saveJobs';
import { EMPTY } from './shape';
import { useJobs } from './useJobs';

const loadReader = () => import('./drawerText');

export function DrawerView() {
  const jobs = useJobs();
  const [typed, setText] = useState<string | null>(null);
  const { drawer } = jobs.contents;
  // What the typing began from: another tab may fill the drawer meanwhile.
  const [seen, setSeen] = useState(drawer);
  const setTyped = (next: string | null) => {
    if (typed === null) setSeen(drawer);
    setText(next);
  };
  const { engine, failed } = useEngine(loadReader, jobs.ready);
  const text = typed ?? engine?.drawerText(drawer) ?? '';
  const { drawer: read, rows } = useMemo(
    () => engine?.readDrawer(text) ?? { drawer: EMPTY.drawer, rows: [] },
    [engine, text],
  );
  const count = read.taps.length + read.drills.length + read.machines.length;
  const keep = () => {
    // Before anything could be read there is nothing to keep, and nothing to write over.
    if (!engine) return;
    // What could not be read stays in the field to be mended; nothing typed is thrown away.
    const all = rows.every(({ ok }) => ok);
    if (jobs.change({ kind: 'drawer', drawer: read, seen: typed === null ? drawer : seen }) && all)
      setTyped(null);
  };
  return (
    <>
      <Keeping kept={jobs} name="tapped-hole-jobs" onSave={saveJobs} />
      {failed && !engine && (
        <Notice level="stop" title={TEXT.notLoaded}>
          <p>{TEXT.notLoadedText}</p>
        </Notice>
      )}
      <TextArea
        name="drawer"
        label={TEXT.drawerField}
        hint={TEXT.drawerHint}
        rows={10}
        value={text}
        onInput={setTyped}
      />
      <p class="actions">
        <button type="button" class="button" onClick={keep}>
          {TEXT.drawerKeep}
        </button>
        <FileButton
          name="drawer-file"
          label={TEXT.drawerOpen}
          accept=".csv,.txt,text/csv,text/plain"
          onText={(file) => setTyped(text.trim() === '' ? file : `${text.trimEnd()}\n${file}`)}
          onFailure={() => jobs.say(TEXT.notOpened)}
        />
        {count > 0 && (
          <button
            type="button"
            class="button plain"
            onClick={() =>
              engine && saveFile('tap-drawer.csv', engine.drawerCsv(read), 'text/csv;charset=utf-8')
            }
          >
            {TEXT.drawerSave}
          </button>
        )}
        <span role="status">{jobs.said}</span>
      </p>
      <h2>{TEXT.drawerRows}</h2>
      {rows.length === 0 ? (
        <p>{TEXT.drawerNone}</p>
      ) : (
        <table class="drawer-rows">
          <thead>
            <tr>
              <th scope="col">{TEXT.drawerLine}</th>
              <th scope="col">{TEXT.drawerRead}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ text: line, said, ok }, at) => (
              <tr key={`${at} ${line}`}>
                <th scope="row">{line}</th>
                <td class={ok ? undefined : 'drawer-bad'}>
                  <Sign level={ok ? 'good' : 'stop'} /> {said}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}
