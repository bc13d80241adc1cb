/** The finder: what is seen, one check after another, a change to try. Everything stays in the address. */

import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { CheckAnswer } from '../../core/diagnose/finder';
import { diagnose } from '../../core/diagnose/finder';
import type { SymptomId } from '../../core/diagnose/symptoms';
import { PictureView } from '../drawing/PictureView';
import { symptomPicture } from '../drawing/symptoms';
import { FIELDS as HOLE_FIELDS, type Inputs } from '../planner/inputs';
import { useEngine } from '../planner/useEngine';
import { Notice } from '../result/Notice';
import { writeAddress } from '../state/address';
import { Announcer } from '../state/Announcer';
import { openInUnit, useUnit } from '../state/units';
import { useAddress } from '../state/useAddress';
import { SYMPTOM_WORDS } from '../words/en/symptoms';
import { TROUBLE } from '../words/en/trouble';
import { addressText } from '../calculators/messages';
import { answerText, causeText, checkText } from '../words/trouble';
import { Change } from './Change';
import { FIELDS, readSaid, readTried, withAnswer, withTried, type FinderValues } from './inputs';
import { NextCheck } from './NextCheck';
import { OwnHole } from './OwnHole';
import { Ranking } from './Ranking';
import { SymptomChoice } from './SymptomChoice';

const loadEngine = () => import('./engine');

/** True once a hole was typed: then its plan is wanted. */
function holeStarted(values: FinderValues): boolean {
  return values.thread.trim() !== '';
}

function Told(props: { answers: readonly CheckAnswer[]; onChange: (answer: CheckAnswer) => void }) {
  if (props.answers.length === 0) return null;
  return (
    <section aria-labelledby="told-heading">
      <h3 id="told-heading">{TROUBLE.told}</h3>
      <ul class="told-list">
        {props.answers.map((each) => (
          <li key={each.check}>
            <span>
              {checkText(each.check, 'mm').ask}{' '}
              <strong>{answerText(each.check, each.answer)}</strong>
            </span>{' '}
            <button
              type="button"
              class="link-button no-print"
              onClick={() => props.onChange(each)}
              aria-label={`${TROUBLE.change}: ${checkText(each.check, 'mm').ask}`}
            >
              {TROUBLE.change}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function Finder() {
  const unit = useUnit();
  const address = useAddress(FIELDS, (arrived) => openInUnit(arrived.units, holeStarted(arrived)));
  const { values } = address;
  const moved = useRef(false);
  const started = holeStarted(values);
  const { engine, failed } = useEngine(loadEngine, started);
  const own = useMemo(
    () => (engine && started ? engine.ownPlan(values, unit) : null),
    [engine, started, values, unit],
  );
  const symptom = values.symptom as SymptomId | '';
  const answers = readSaid(values.said);
  const tried = readTried(values.tried);
  const outcome =
    symptom === '' ? null : diagnose({ symptom, answers, plan: own?.facts ?? [], ruledOut: tried });
  const diagnosis = outcome?.ok ? outcome.value : null;
  const leader = diagnosis?.ranked[0];

  const put = (changes: Partial<FinderValues>) => {
    moved.current = true;
    address.set(changes);
    address.settle();
  };
  // After a button has gone, the keyboard stands at the heading of what took its place.
  useEffect(() => {
    if (!moved.current) return;
    moved.current = false;
    const places = ['check-heading', 'change-heading', 'chosen-heading', 'choose-heading'];
    const heading = places.map((id) => document.getElementById(id)).find((found) => found !== null);
    heading?.focus();
  }, [values.symptom, values.said, values.tried]);

  // Once something was chosen, its sheet is wanted on paper, not the whole list below.
  useEffect(() => {
    document.querySelector('.matrix')?.classList.toggle('no-print', symptom !== '');
  }, [symptom]);

  const spoken =
    diagnosis?.next !== undefined && diagnosis?.next !== null
      ? TROUBLE.statusNext.replace('{check}', checkText(diagnosis.next, unit).ask)
      : leader
        ? TROUBLE.statusTry
            .replace('{cause}', causeText(leader.cause, unit).name)
            .replace('{change}', causeText(leader.cause, unit).change)
        : '';
  const plannerHref = `/plan/${writeAddress(values as Inputs, HOLE_FIELDS)}`;

  return (
    <div class="finder">
      {address.notes.length > 0 && (
        <Notice level="amber" title="Not all of the address could be used">
          {address.notes.map((note) => (
            <p key={note.name}>{addressText(note, note.name)}</p>
          ))}
        </Notice>
      )}
      {symptom === '' || !diagnosis ? (
        <SymptomChoice onChoose={(id) => put({ symptom: id, said: '', tried: '' })} />
      ) : (
        <>
          <div class="symptom-chosen">
            <PictureView picture={symptomPicture(symptom)} id="chosen-picture" />
            <div>
              <p class="label">{TROUBLE.chosen}</p>
              <h2 id="chosen-heading" tabIndex={-1}>
                {SYMPTOM_WORDS[symptom].name}
              </h2>
              <p>{SYMPTOM_WORDS[symptom].seen}</p>
              <button
                type="button"
                class="link-button no-print"
                onClick={() => put({ symptom: '', said: '', tried: '' })}
              >
                {TROUBLE.other}
              </button>
            </div>
          </div>
          <div class="finding">
            <div>
              {diagnosis.next && (
                <NextCheck
                  check={diagnosis.next}
                  unit={unit}
                  onAnswer={(said) => put({ said: withAnswer(values.said, diagnosis.next!, said) })}
                />
              )}
              {leader ? (
                <Change
                  leader={leader}
                  settled={diagnosis.settled}
                  unit={unit}
                  onTried={() => put({ tried: withTried(values.tried, leader.cause, true) })}
                />
              ) : (
                <Notice level="amber" title={TROUBLE.causes}>
                  <p>{TROUBLE.nothing}</p>
                </Notice>
              )}
              <Told
                answers={answers}
                onChange={({ check }) => put({ said: withAnswer(values.said, check, null) })}
              />
              {tried.length > 0 && (
                <section aria-labelledby="tried-heading">
                  <h3 id="tried-heading">{TROUBLE.triedList}</h3>
                  <ul class="told-list">
                    {tried.map((cause) => (
                      <li key={cause}>
                        <span>{causeText(cause, unit).name}</span>{' '}
                        <button
                          type="button"
                          class="link-button no-print"
                          aria-label={`${TROUBLE.undo}: ${causeText(cause, unit).name}`}
                          onClick={() => put({ tried: withTried(values.tried, cause, false) })}
                        >
                          {TROUBLE.undo}
                        </button>
                      </li>
                    ))}
                  </ul>
                </section>
              )}
            </div>
            <div>
              <Ranking diagnosis={diagnosis} unit={unit} />
            </div>
          </div>
        </>
      )}
      <OwnHole
        values={values}
        unit={unit}
        own={own}
        failed={failed}
        started={started}
        plannerHref={plannerHref}
        set={(name, value) => address.set({ [name]: value, units: unit === 'in' ? 'in' : '' })}
        settle={address.settle}
      />
      <Announcer text={spoken} />
    </div>
  );
}
