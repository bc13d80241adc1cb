/** How the keeping stands, when it is not as it should be: what is wrong, what to do, and the file. */

import { Notice } from '../result/Notice';
import { KEEPING } from '../words/en/keeping';
import { saveFile } from './saveFile';
import type { Unkept } from './shelf';
import type { Shelved } from './useShelf';

/** `onSave`: saves what could not be kept; missing where nothing was lost yet. */
export function NotSaved({ why, onSave }: { why: Unkept; onSave?: (() => void) | undefined }) {
  return (
    <Notice level="amber" title={KEEPING.unsaved}>
      <p>{KEEPING[why]}</p>
      {onSave && (
        <p class="actions">
          <button type="button" class="button plain" onClick={onSave}>
            {KEEPING.save}
          </button>
        </p>
      )}
    </Notice>
  );
}

type Aside = Pick<Shelved<unknown>, 'aside' | 'forgetAside'>;

/** What could not be read, offered as a file before it can be forgotten. `name`: how its file is called. */
export function SetAside({ kept, name }: { kept: Aside; name: string }) {
  const { aside, forgetAside } = kept;
  if (aside.length === 0) return null;
  return (
    <Notice level="amber" title={KEEPING.aside}>
      <p>{KEEPING.asideText}</p>
      <p class="actions">
        <button
          type="button"
          class="button plain"
          onClick={() => saveFile(`${name}-set-aside.txt`, aside.join('\n\n'), 'text/plain')}
        >
          {KEEPING.asideSave}
        </button>
        <button type="button" class="link-button" onClick={forgetAside}>
          {KEEPING.asideForget}
        </button>
      </p>
    </Notice>
  );
}

interface Props<Contents> {
  kept: Aside & Pick<Shelved<Contents>, 'contents' | 'condition' | 'unsaved'>;
  /** How its files are called. */
  name: string;
  onSave: (contents: Contents) => void;
}

export function Keeping<Contents extends { unread: readonly unknown[] }>(props: Props<Contents>) {
  const { kept, name, onSave } = props;
  const { unsaved, condition, contents } = kept;
  const why = unsaved?.why ?? (condition === 'good' ? null : condition);
  return (
    <>
      {why && <NotSaved why={why} onSave={unsaved ? () => onSave(unsaved.contents) : undefined} />}
      <SetAside kept={kept} name={name} />
      {contents.unread.length > 0 && (
        <Notice level="amber" title={KEEPING.aside}>
          <p>{KEEPING.unread}</p>
        </Notice>
      )}
    </>
  );
}
