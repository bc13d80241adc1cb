/** The part to and from a file. */

import { useState } from 'preact/hooks';
import { FileButton } from '../fields/FileButton';
import { Notice } from '../result/Notice';
import { saveFile } from '../state/saveFile';
import { fitsAddress } from '../state/useAddress';
import { fileName, readPart, writePart } from './file';
import { PART_FIELDS } from './inputs';
import { TEXT } from '../words/en/part';
import type { PartState } from './usePart';

export function Files({ part, version }: { part: PartState; version: string }) {
  const { values, started, engine, attempt, unit, stale } = part;
  const drawing = stale ? null : attempt?.drawing;
  const [said, setSaid] = useState('');
  const open = (text: string, name: string) => {
    const opened = readPart(text);
    if (opened.ok) part.put(opened.values);
    setSaid(opened.ok ? `${TEXT.opened}: ${name}` : opened.said);
  };
  return (
    <>
      {!fitsAddress(values, PART_FIELDS) && (
        <Notice level="amber" title={TEXT.save}>
          <p>{TEXT.tooLong}</p>
        </Notice>
      )}
      <p class="actions">
        {started && (
          <button
            type="button"
            class="button plain"
            onClick={() => saveFile(fileName(values), writePart(values), 'application/json')}
          >
            {TEXT.save}
          </button>
        )}
        {engine && drawing && (
          <button
            type="button"
            class="button plain"
            onClick={() => setSaid(engine.keepPart(drawing, values, unit, version))}
          >
            {TEXT.keep}
          </button>
        )}
        <FileButton
          name="part-file"
          label={TEXT.open}
          accept=".json,application/json"
          onText={open}
          onFailure={() => setSaid(TEXT.notOpened)}
        />
        <a class="link-button part-jobs" href="/jobs/">
          {TEXT.jobs}
        </a>
      </p>
      <p role="status">{said}</p>
    </>
  );
}
