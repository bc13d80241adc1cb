/** A calculator's worked example, for its page to hold as plain HTML: there before any script, and without it. */

import type { CalculatorWords, Engine, ValuesOf } from './calculator';
import { TEXT } from '../words/en/calculators/shared';

/** What an example is made by: the parts of an engine, so that the page need not hold the whole. */
export interface ExampleProps<Name extends string, Answer> extends Pick<
  Engine<Name, Answer>,
  'attempt' | 'Result'
> {
  words: CalculatorWords<Name>;
  values: ValuesOf<Name>;
  lessons: readonly string[];
}

export function Example<Name extends string, Answer>(props: ExampleProps<Name, Answer>) {
  const { attempt, Result, words, values, lessons } = props;
  const { answer } = attempt(values, 'mm');
  if (answer === null) throw new Error(`No answer to the worked example: ${words.example}`);
  return (
    <>
      <p class="example-mark">
        <strong>{TEXT.example}</strong> {words.example}{' '}
        <span class="needs-script">{TEXT.exampleGoes}</span>
      </p>
      <Result answer={answer} unit="mm" lessons={lessons} />
    </>
  );
}
