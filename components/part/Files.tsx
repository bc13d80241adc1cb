/** The part to and from a file. */

import { useState } from 'preact/hooks';
import { FileButton } from '../fields/FileButton';
import { Notice } from '../result/Notice';
import { saveFile } from '../state/saveFile';
import { fitsAddress } from '../state/useAddress';
import { fileName, readPart, writePart } from './file';
import { PART_FIELDS } from './inputs';
import { TEXT } from './messages';
import type { PartState } from './usePart';

export function Files({ part }: { part: PartState }) {
  const { values, started } = part;
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
        <FileButton
          name="part-file"
          label={TEXT.open}
          accept=".json,application/json"
          onText={open}
          onFailure={() => setSaid(TEXT.notOpened)}
        />
        <span role="status">{said}</span>
      </p>
    </>
  );
}
