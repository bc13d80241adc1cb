/** Progress carried off, brought in, or cleared. */

import { useState } from 'preact/hooks';
import { FileButton } from '../fields/FileButton';
import { saveFile } from '../state/saveFile';
import { REVIEW } from '../words/en/review';
import { joined } from './progress';
import { readProgress, writeProgress } from './shape';
import type { ProgressState } from './useProgress';

interface Props {
  progress: ProgressState;
  onSaid: (said: string) => void;
}

/** Takes a file's progress in, and says what came of it. */
export function openFile(progress: Pick<ProgressState, 'change'>, text: string): string {
  const read = readProgress(text);
  if (read.state === 'damaged') return REVIEW.notOurs;
  if (read.state === 'newer') return REVIEW.newerFile;
  progress.change((kept) => joined(kept, read.contents));
  return REVIEW.opened;
}

export function Files({ progress, onSaid }: Props) {
  const [asking, setAsking] = useState(false);
  const { contents } = progress;
  const empty = Object.keys(contents.standings).length === 0;
  const save = () =>
    saveFile('tapped-hole-review.json', `${writeProgress(contents, 2)}\n`, 'application/json');
  if (asking) {
    return (
      <>
        <p>{REVIEW.clearAsk}</p>
        <p class="actions">
          <button
            type="button"
            class="button plain"
            onClick={() => {
              progress.clear();
              setAsking(false);
              onSaid(REVIEW.cleared);
            }}
          >
            {REVIEW.clearSure}
          </button>
          <button type="button" class="link-button" onClick={() => setAsking(false)}>
            {REVIEW.keep}
          </button>
        </p>
      </>
    );
  }
  return (
    <p class="actions">
      {!empty && (
        <button type="button" class="button plain" onClick={save}>
          {REVIEW.save}
        </button>
      )}
      <FileButton
        name="review-file"
        label={REVIEW.open}
        accept=".json,application/json"
        onText={(text) => onSaid(openFile(progress, text))}
        onFailure={() => onSaid(REVIEW.notOpened)}
      />
      {!empty && (
        <button type="button" class="link-button" onClick={() => setAsking(true)}>
          {REVIEW.clear}
        </button>
      )}
    </p>
  );
}
