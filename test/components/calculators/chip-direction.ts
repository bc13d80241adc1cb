export { engine } from '../../../components/calculators/chip-direction/engine';
export { EXAMPLE } from '../../../components/calculators/chip-direction/examples';
export { INPUTS } from '../../../components/calculators/chip-direction/inputs';
export { WORDS } from '../../../components/words/en/calculators/chip-direction/messages';
export { ChipDirection as View } from '../../../components/calculators/chip-direction/view';
