/** The jobs carried off in a file that names its schema. */

import { fromFolder } from '../state/place';
import { saveFile } from '../state/saveFile';
import { writeContents, type Contents } from './shape';

/** Hands the reader all of it as one file. */
export function saveJobs(contents: Contents): void {
  const data = JSON.parse(writeContents(contents)) as object;
  const name = 'jobs.schema.json';
  const schema = fromFolder() ? name : new URL(`/${name}`, location.href).href;
  const text = `${JSON.stringify({ $schema: schema, ...data }, null, 2)}\n`;
  saveFile('tapped-hole-jobs.json', text, 'application/json');
}
