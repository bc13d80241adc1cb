/** How the store stands, when it is not as it should be: what is wrong and what to do. */

import { Notice } from '../result/Notice';
import { saveFile } from '../state/saveFile';
import { TEXT } from '../words/en/jobs';
import type { JobsState } from './useJobs';

export function Standing({ jobs }: { jobs: JobsState }) {
  const { standing, aside, contents } = jobs;
  return (
    <>
      {standing !== 'good' && (
        <Notice level="amber" title={standing === 'newer' ? TEXT.notSavedNewer : TEXT.notSaved}>
          <p>{standing === 'newer' ? TEXT.newer : TEXT.blocked}</p>
        </Notice>
      )}
      {aside.length > 0 && (
        <Notice level="amber" title={TEXT.aside}>
          <p>{TEXT.asideText}</p>
          <p class="actions">
            <button
              type="button"
              class="button plain"
              onClick={() => saveFile('jobs-set-aside.txt', aside.join('\n\n'), 'text/plain')}
            >
              {TEXT.asideSave}
            </button>
            <button type="button" class="link-button" onClick={jobs.forgetAside}>
              {TEXT.asideForget}
            </button>
          </p>
        </Notice>
      )}
      {contents.unread.length > 0 && (
        <Notice level="amber" title={TEXT.aside}>
          <p>{TEXT.unread}</p>
        </Notice>
      )}
    </>
  );
}
