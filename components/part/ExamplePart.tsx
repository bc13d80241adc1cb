/** The worked example, for the page to hold as plain HTML: there before any script, and without it. */

import { EXAMPLE } from './examples';
import { TEXT } from '../words/en/part';
import { PartResult } from './PartResult';
import { attempt } from './state';

export function ExamplePart() {
  const { drawing } = attempt(EXAMPLE, 'mm');
  if (!drawing) throw new Error('The worked example of the drawing page has no plan.');
  return (
    <>
      <p class="example-mark no-print">
        <strong>{TEXT.example}</strong> {TEXT.exampleText}{' '}
        <span class="needs-script">{TEXT.exampleGoes}</span>
      </p>
      <PartResult drawing={drawing} values={EXAMPLE} unit="mm" example made="" />
    </>
  );
}
