/** Which column of a pasted table is read as what; each may be read as something else. */

import { COLUMN_KINDS, type Column, type ColumnKind } from '../../core/drawing/columns';
import type { HoleTable } from '../../core/drawing/table';
import { Fold } from '../fields/Fold';
import { SelectField } from '../fields/SelectField';
import { COLUMN_NAMES, TABLE } from '../words/en/part';
import { say } from '../words/say';

const CHOICES = COLUMN_KINDS.map((value) => ({ value, label: COLUMN_NAMES[value] }));

/** Cells of a column to know it by. */
const SHOWN = 3;

function cellsOf({ entries }: HoleTable, at: number): string[] {
  const cells = entries.flatMap(({ cells: row }) => (row?.[at] ? [row[at]] : []));
  return [...new Set(cells)].slice(0, SHOWN);
}

/** A column whose heading says nothing, or whose numbers may be several things. */
function isUnsure({ kind, unknown }: Column): boolean {
  return kind === 'unclear' || unknown === true;
}

export interface TableColumnsProps {
  table: HoleTable;
  onChoose: (at: number, kind: ColumnKind) => void;
}

export function TableColumns({ table, onChoose }: TableColumnsProps) {
  const { columns } = table;
  const unsure = columns.some(isUnsure);
  return (
    <Fold summary={say(TABLE.heading, { count: String(columns.length) })} open={unsure}>
      <p class="hint">{unsure ? TABLE.unclear : TABLE.check}</p>
      <ol class="table-columns">
        {columns.map((column, at) => {
          const cells = cellsOf(table, at);
          const number = String(at + 1);
          const { name, kind } = column;
          return (
            <li key={at} class={isUnsure(column) ? 'unsure' : undefined}>
              <SelectField
                name={`column-${number}`}
                label={say(name === '' ? TABLE.column : TABLE.named, { number, name })}
                value={kind}
                choices={CHOICES}
                hint={
                  cells.length === 0
                    ? TABLE.empty
                    : say(TABLE.example, { cells: cells.join(' · ') })
                }
                onInput={(value) => onChoose(at, value as ColumnKind)}
              />
            </li>
          );
        })}
      </ol>
    </Fold>
  );
}
