/** Progress carried off, brought in, or cleared. */

import { FileButton } from '../fields/FileButton';
import { Clear } from '../state/Clear';
import { saveFile } from '../state/saveFile';
import { KEEPING } from '../words/en/keeping';
import { REVIEW } from '../words/en/review';
import { joined } from './progress';
import { readProgress, writeProgress, type Progress } from './shape';
import type { ProgressState } from './useProgress';

interface Props {
  progress: ProgressState;
  onSaid: (said: string) => void;
}

/** Hands the reader the progress as a file. */
export function saveProgress(contents: Progress): void {
  const text = `${writeProgress(contents, 2)}\n`;
  saveFile('tapped-hole-review.json', text, 'application/json');
}

/** Takes a file's progress in, and says what came of it. */
export function openFile(
  progress: { change: (make: (kept: Progress) => Progress) => unknown },
  text: string,
): string {
  const read = readProgress(text);
  if (read.state === 'damaged') return REVIEW.notOurs;
  if (read.state === 'newer') return REVIEW.newerFile;
  progress.change((kept) => joined(kept, read.contents));
  return REVIEW.opened;
}

export function Files({ progress, onSaid }: Props) {
  const { contents } = progress;
  const empty = Object.keys(contents.standings).length === 0;
  return (
    <>
      <p class="actions">
        {!empty && (
          <button type="button" class="button plain" onClick={() => saveProgress(contents)}>
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
      </p>
      {!empty && (
        <Clear
          label={REVIEW.clear}
          ask={REVIEW.clearAsk}
          onSave={() => saveProgress(contents)}
          onClear={() => {
            const outcome = progress.clear();
            onSaid(outcome === 'kept' ? REVIEW.cleared : KEEPING[outcome]);
          }}
        />
      )}
    </>
  );
}
