/** How the keeping stands, when it is not as it should be: what is wrong, and what to do. */

import { Notice } from '../result/Notice';
import { saveFile } from '../state/saveFile';
import { REVIEW } from '../words/en/review';
import type { ProgressState } from './useProgress';

export function Condition({ progress }: { progress: ProgressState }) {
  const { condition, unsaved, aside, contents } = progress;
  const wrong = unsaved ?? (condition === 'good' ? null : condition);
  return (
    <>
      {wrong && (
        <Notice level="amber" title={REVIEW.unsaved}>
          <p>{REVIEW[wrong]}</p>
        </Notice>
      )}
      {aside.length > 0 && (
        <Notice level="amber" title={REVIEW.aside}>
          <p>{REVIEW.asideText}</p>
          <p class="actions">
            <button
              type="button"
              class="button plain"
              onClick={() => saveFile('review-set-aside.txt', aside.join('\n\n'), 'text/plain')}
            >
              {REVIEW.asideSave}
            </button>
            <button type="button" class="link-button" onClick={progress.forgetAside}>
              {REVIEW.asideForget}
            </button>
          </p>
        </Notice>
      )}
      {contents.unread.length > 0 && (
        <Notice level="amber" title={REVIEW.aside}>
          <p>{REVIEW.unread}</p>
        </Notice>
      )}
    </>
  );
}
