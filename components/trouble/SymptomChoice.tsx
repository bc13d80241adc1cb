/** What can be seen, in pictures: the first question. */

import { SYMPTOM_GROUPS, type SymptomGroup, type SymptomId } from '../../core/diagnose/symptoms';
import { PictureView } from '../drawing/PictureView';
import { symptomPicture } from '../drawing/symptoms';
import { SYMPTOM_GROUP_NAMES, SYMPTOM_WORDS } from '../words/en/symptoms';
import { TROUBLE } from '../words/en/trouble';

const GROUPS = Object.keys(SYMPTOM_GROUPS) as SymptomGroup[];

export function SymptomChoice({ onChoose }: { onChoose: (symptom: SymptomId) => void }) {
  return (
    <section class="no-print" aria-labelledby="choose-heading">
      <h2 id="choose-heading" tabIndex={-1}>
        {TROUBLE.choose}
      </h2>
      {GROUPS.map((group) => (
        <section key={group} aria-labelledby={`group-${group}`}>
          <h3 id={`group-${group}`}>{SYMPTOM_GROUP_NAMES[group]}</h3>
          <ul class="symptoms">
            {SYMPTOM_GROUPS[group].map((id) => (
              <li key={id}>
                <button type="button" class="symptom" onClick={() => onChoose(id)}>
                  <span aria-hidden="true">
                    <PictureView picture={symptomPicture(id)} id={`tile-${id}`} />
                  </span>
                  <span>{SYMPTOM_WORDS[id].name}</span>
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </section>
  );
}
