/** Links that leave the language of a page: what is not translated stands in English. */

import { LANGUAGE } from './en/site';

/** The `hreflang` of a link to a page that is in English alone; none where this page is English too. */
export const IN_ENGLISH = LANGUAGE.tag === 'en' ? undefined : 'en';

/** The `hreflang` of a link on this site; none where its page is in the language of this one. */
export function languageOf(href: string): string | undefined {
  return href.startsWith(`${LANGUAGE.home}/`) ? undefined : IN_ENGLISH;
}
