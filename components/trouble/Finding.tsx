/** What follows once something was chosen or a hole typed: checks, change, ranking, the hole's own numbers. Loads at first use. */

import { useEffect, useMemo, useRef } from 'preact/hooks';
import { diagnose } from '../../core/diagnose/finder';
import type { SymptomId } from '../../core/diagnose/symptoms';
import { PictureView } from '../drawing/PictureView';
import { symptomPicture } from '../drawing/symptoms';
import { FIELDS as HOLE_FIELDS, type Inputs } from '../planner/inputs';
import { useEngine } from '../planner/useEngine';
import { Notice } from '../result/Notice';
import { writeAddress } from '../state/address';
import { Announcer } from '../state/Announcer';
import { SYMPTOM_WORDS } from '../words/en/symptoms';
import { TROUBLE } from '../words/en/trouble';
import type { Unit } from '../words/format';
import { causeText, checkText } from '../words/trouble';
import { Change } from './Change';
import {
  holeStarted,
  readSaid,
  readTried,
  withAnswer,
  withTried,
  type FinderValues,
} from './inputs';
import { NextCheck } from './NextCheck';
import { OwnHole } from './OwnHole';
import { Ranking } from './Ranking';
import { Told, Tried } from './Told';

const loadEngine = () => import('./engine');

export interface FindingProps {
  values: FinderValues;
  unit: Unit;
  /** How often a symptom was chosen on this page, by hand. */
  choices: number;
  /** One change that is an entry of the history by itself. */
  put: (changes: Partial<FinderValues>) => void;
  set: (changes: Partial<FinderValues>) => void;
  settle: () => void;
}

/** After a button has gone, the keyboard stands at the heading of what took its place. */
function useFocus({ values, choices }: FindingProps): () => void {
  const moved = useRef(false);
  const seen = useRef(0);
  useEffect(() => {
    if (!moved.current && seen.current === choices) return;
    moved.current = false;
    seen.current = choices;
    const places = ['check-heading', 'change-heading', 'chosen-heading'];
    places
      .map((id) => document.getElementById(id))
      .find((found) => found !== null)
      ?.focus();
  }, [choices, values.said, values.tried]);
  return () => {
    moved.current = true;
  };
}

export function Finding(props: FindingProps) {
  const { values, unit } = props;
  const moving = useFocus(props);
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
    moving();
    props.put(changes);
  };

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
    <>
      {symptom !== '' && diagnosis && (
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
              <Tried
                causes={tried}
                unit={unit}
                onUndo={(cause) => put({ tried: withTried(values.tried, cause, false) })}
              />
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
        set={(name, value) => props.set({ [name]: value, units: unit === 'in' ? 'in' : '' })}
        settle={props.settle}
      />
      <Announcer text={spoken} />
    </>
  );
}
