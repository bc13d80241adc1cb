/** The job card's page: blanks to fill in, a button to print, and the sheet as it will come out. */

import { useEffect, useState } from 'preact/hooks';
import { TextField } from '../fields/TextField';
import { EXAMPLE, EXAMPLE_CARD } from '../planner/examples';
import { CARD_NAMES, FIELDS, type Inputs } from '../planner/inputs';
import { LABELS } from '../planner/messages';
import { attempt } from '../planner/state';
import { useForm, type PlannerState } from '../planner/useForm';
import { writeAddress } from '../state/address';
import { Card } from './Card';
import { CARD } from './messages';

export interface JobCardProps {
  version: string;
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
      address: new URL(`../${query}`, location.href).href,
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

export function JobCard({ version }: JobCardProps) {
  const planner = useForm();
  const { form, unit, started } = planner;
  const values: Inputs = started ? form.values : { ...EXAMPLE, ...EXAMPLE_CARD };
  const { plan, request } = started ? planner.attempt : attempt(values, 'mm');
  const query = planQuery(values);
  const place = usePlace(query, version);
  const back = `/plan/${started ? writeAddress(form.values, FIELDS) : ''}`;

  if (!plan || !request) {
    return (
      <p class="prose">
        {CARD.notReady} <a href={back}>{CARD.mend}</a>
      </p>
    );
  }
  return (
    <div class="card-page">
      {started ? (
        <Blanks planner={planner} back={back} />
      ) : (
        <p class="card-form">
          {CARD.noHole} <a href="/plan/">{CARD.planOne}</a>
        </p>
      )}
      <Card
        plan={plan}
        request={request}
        values={values}
        unit={unit}
        example={!started}
        {...place}
        address={started ? place.address : ''}
      />
    </div>
  );
}
