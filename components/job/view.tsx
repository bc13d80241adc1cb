/** The job card's page: blanks to fill in, a button to print, and the sheet as it will come out. */

import { useEffect, useState } from 'preact/hooks';
import { TextField } from '../fields/TextField';
import { CARD_NAMES, FIELDS, type Inputs } from '../planner/inputs';
import { LABELS, TEXT } from '../words/en/planner';
import { useForm, type PlannerState } from '../planner/useForm';
import { Notice } from '../result/Notice';
import { writeAddress } from '../state/address';
import { fromFolder } from '../state/place';
import { LANGUAGE } from '../words/en/site';
import type * as engineModule from './engine';
import { CARD } from '../words/en/card';

export interface JobCardProps {
  version: string;
  /** Id of the worked example's card, which the page holds as plain HTML. */
  example: string;
}

interface SheetProps {
  planner: PlannerState<typeof engineModule>;
  version: string;
  back: string;
}

/** The plan's own inputs: what only stands on the card would make its code larger for nothing. */
function planQuery(values: Inputs): string {
  const bare = { ...values };
  for (const name of CARD_NAMES) bare[name] = '';
  return writeAddress(bare, FIELDS);
}

/** What only a browser knows: where this site lives and what day it is. */
function usePlace(query: string, version: string): { address: string; made: string } {
  const [place, setPlace] = useState({ address: '', made: '' });
  useEffect(() => {
    const day = new Date().toLocaleDateString('sv-SE');
    setPlace({
      // The code on the card is for a phone, which cannot follow an address of this machine.
      address: fromFolder() ? '' : new URL(`../${query}`, location.href).href,
      made: `${CARD.made} ${day} ${CARD.version} ${version}.`,
    });
  }, [query, version]);
  return place;
}

function Blanks({ planner, back }: { planner: PlannerState; back: string }) {
  const { values, set, settle } = planner.form;
  return (
    <form class="card-form" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <h2>{CARD.blanks}</h2>
      <p class="hint">{CARD.blanksHint}</p>
      <div class="row">
        {CARD_NAMES.map((name) => (
          <TextField
            key={name}
            name={name}
            label={LABELS[name]}
            value={values[name]}
            onInput={(value) => set(name, value)}
            onSettle={() => settle(name)}
          />
        ))}
      </div>
      <p class="actions">
        <button type="button" class="button" onClick={() => window.print()}>
          {CARD.print}
        </button>
        <a class="button plain" href={back}>
          {CARD.back}
        </a>
      </p>
    </form>
  );
}

const loadEngine = () => import('./engine');

function Sheet({ planner, version, back }: SheetProps) {
  const { engine, attempt, failed, form, asked } = planner;
  const place = usePlace(planQuery(form.values), version);
  if (failed && !engine) {
    return (
      <Notice level="stop" title={TEXT.notLoaded}>
        <p>{TEXT.notLoadedText}</p>
      </Notice>
    );
  }
  if (!engine || !attempt) return <p class="quiet">{TEXT.loading}</p>;
  if (!attempt.plan || !attempt.request) {
    return (
      <Notice level="amber" title={CARD.notReady}>
        <p>
          <a href={back}>{CARD.mend}</a>
        </p>
      </Notice>
    );
  }
  return (
    <engine.Card
      plan={attempt.plan}
      request={attempt.request}
      values={form.values}
      notRead={attempt.callout?.notRead}
      unit={asked.unit}
      example={false}
      {...place}
    />
  );
}

export function JobCard({ version, example }: JobCardProps) {
  const planner = useForm(loadEngine);
  const { form, started } = planner;
  const back = `${LANGUAGE.home}/plan/${writeAddress(form.values, FIELDS)}`;
  useEffect(() => {
    const sheet = document.getElementById(example);
    if (sheet) sheet.hidden = started;
  }, [example, started]);

  if (!started) {
    return (
      <p class="card-form">
        {CARD.noHole} <a href={`${LANGUAGE.home}/plan/`}>{CARD.planOne}</a>
      </p>
    );
  }
  return (
    <>
      <Blanks planner={planner} back={back} />
      <Sheet planner={planner} version={version} back={back} />
    </>
  );
}
