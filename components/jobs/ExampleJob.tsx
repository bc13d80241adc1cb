/** The example as plain HTML. */

import { EXAMPLE_JOB } from './examples';
import { JobView } from './JobView';
import { TEXT } from '../words/en/jobs';

export function ExampleJob() {
  return (
    <>
      <p class="example-mark no-print">
        <strong>{TEXT.example}</strong> {TEXT.exampleText}
      </p>
      <JobView job={EXAMPLE_JOB} unit="mm" printing={false} made="" />
    </>
  );
}
