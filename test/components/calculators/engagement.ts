export { engine } from '../../../components/calculators/engagement/engine';
export { EXAMPLE } from '../../../components/calculators/engagement/examples';
export { INPUTS } from '../../../components/calculators/engagement/inputs';
export { WORDS } from '../../../components/words/en/calculators/engagement/messages';
export { Engagement as View } from '../../../components/calculators/engagement/view';
