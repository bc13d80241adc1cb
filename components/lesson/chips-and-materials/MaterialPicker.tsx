import { useState } from 'preact/hooks';
import { ChipPath } from '../../drawing/ChipPath';
import { ChoiceField } from '../../fields/ChoiceField';
import { CHIPS } from '../../words/en/chips';
import { MATERIALS_SHORT } from '../../words/en/names';
import { HOLE_NAMES, pictured, told, type HoleName, type MaterialCase } from './told';

interface Props {
  name: string;
  materials: MaterialCase[];
  /** True where the hole can be changed as well. */
  holes?: boolean;
}

/** Choose the metal, then the hole: how the chip comes off, and which tap that asks for. */
export function MaterialPicker({ name, materials, holes = false }: Props) {
  const first = materials[0]!;
  const [material, setMaterial] = useState(first);
  const [hole, setHole] = useState<HoleName>('blind');
  const picture = pictured(material, hole);
  return (
    <div class="explorer turner">
      {picture ? <ChipPath model={picture} id={`${name}-figure`} /> : <div />}
      <div>
        <div class="told" role="status">
          <p>{told(material, hole)}</p>
        </div>
        <div class="explorer-controls needs-script">
          <ChoiceField
            name={`${name}-material`}
            label={CHIPS.material}
            value={material.id}
            choices={materials.map(({ id }) => ({ value: id, label: MATERIALS_SHORT[id] }))}
            onInput={(value) => setMaterial(materials.find(({ id }) => id === value) ?? first)}
          />
          {holes && (
            <ChoiceField
              name={`${name}-hole`}
              label={CHIPS.hole}
              value={hole}
              choices={HOLE_NAMES.map((value) => ({ value, label: CHIPS[value] }))}
              onInput={(value) => setHole(value as HoleName)}
            />
          )}
          <div class="actions">
            <button
              type="button"
              class="button plain"
              onClick={() => {
                setMaterial(first);
                setHole('blind');
              }}
            >
              {CHIPS.reset}
            </button>
          </div>
        </div>
      </div>
    </div>
  );
}
