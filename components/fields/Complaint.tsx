/** What is wrong with a field, beside it, with a sign as well as a colour. */

import { FIELDS } from '../words/en/fields';
import { Sign } from '../result/Sign';

export function Complaint({ id, text }: { id: string; text: string }) {
  return (
    <p class="complaint" id={id}>
      <Sign level="stop" />
      <span>
        <span class="unseen">{FIELDS.error} </span>
        {text}
      </span>
    </p>
  );
}
