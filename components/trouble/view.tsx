/** The finder: what is seen, one check after another, a change to try. Everything stays in the address. */

import { useEffect, useRef, useState } from 'preact/hooks';
import type { SymptomId } from '../../core/diagnose/symptoms';
import { addressText } from '../calculators/addressText';
import { useEngine } from '../planner/useEngine';
import { Notice } from '../result/Notice';
import { openInUnit, useUnit } from '../state/units';
import { useAddress } from '../state/useAddress';
import { TROUBLE } from '../words/en/trouble';
import { FIELDS, holeStarted, type FinderValues } from './inputs';
import { SymptomChoice } from './SymptomChoice';

const loadFinding = () => import('./Finding');

export function Finder() {
  const unit = useUnit();
  const address = useAddress(FIELDS, (arrived) => openInUnit(arrived.units, holeStarted(arrived)));
  const { values } = address;
  const symptom = values.symptom as SymptomId | '';
  const { engine, failed } = useEngine(loadFinding, symptom !== '' || holeStarted(values));
  const before = useRef(symptom);
  const [choices, setChoices] = useState(0);

  const put = (changes: Partial<FinderValues>) => {
    address.set(changes);
    address.settle();
  };
  // Back at the pictures, the keyboard stands at their question; once something was chosen, its sheet
  // is wanted on paper, not the whole list below.
  useEffect(() => {
    if (symptom === '' && before.current !== '') document.getElementById('choose-heading')?.focus();
    before.current = symptom;
    document.querySelector('.matrix')?.classList.toggle('no-print', symptom !== '');
  }, [symptom]);

  return (
    <div class="finder">
      {address.notes.length > 0 && (
        <Notice level="amber" title={TROUBLE.address}>
          {address.notes.map((note) => (
            <p key={note.name}>{addressText(note, note.name)}</p>
          ))}
        </Notice>
      )}
      {symptom === '' && (
        <SymptomChoice
          onChoose={(id) => {
            put({ symptom: id, said: '', tried: '' });
            setChoices((count) => count + 1);
          }}
        />
      )}
      {engine && (
        <engine.Finding
          values={values}
          unit={unit}
          choices={choices}
          put={put}
          set={address.set}
          settle={address.settle}
        />
      )}
      {failed && !engine && (
        <Notice level="stop" title={TROUBLE.notLoaded}>
          <p>{TROUBLE.notLoadedText}</p>
        </Notice>
      )}
    </div>
  );
}
