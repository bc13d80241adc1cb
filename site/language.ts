/**
 * A build speaks one language. Every sentence stands in `components/words/en/`; another language has
 * a folder beside it, whose modules take the place of the English ones of the same name. No component
 * knows of it: the build swaps the modules.
 */
import { existsSync } from 'node:fs';
import type { AstroIntegration } from 'astro';
import type { Plugin } from 'vite';
import { LANGUAGES, type Language } from '../components/words/languages.ts';

/** Languages besides English that some pages are built in. */
export const TRANSLATIONS: readonly string[] = LANGUAGES.map(({ tag }) => tag).filter(
  (tag) => tag !== 'en',
);

const ENGLISH = /^(.*\/components\/words\/)en(\/.+\.ts)$/;

/** Where the words of `language` for this English module would stand; null for any other module. */
export function counterpart(id: string, language: string): string | null {
  const match = ENGLISH.exec(id.replaceAll('\\', '/'));
  return match ? `${match[1]}${language}${match[2]}` : null;
}

/** Swaps words modules; a module that is not translated stays English. */
export function spoken(language: string): Plugin {
  return {
    name: 'spoken-language',
    enforce: 'pre',
    async resolveId(source, importer, options) {
      // A translation may take what it shares from the English module itself.
      const own = importer?.replaceAll('\\', '/').includes(`/components/words/${language}/`);
      if (language === 'en' || own || !source.startsWith('.')) return null;
      const found = await this.resolve(source, importer, { ...options, skipSelf: true });
      const translated = found && counterpart(found.id, language);
      return translated && existsSync(translated) ? translated : null;
    },
  };
}

/** Pages whose every sentence is translated; the rest of the site stays English and is linked to. */
export const TRANSLATED: Readonly<Record<string, string>> = {
  '/': 'index',
  '/plan/': 'plan/index',
  '/plan/card/': 'plan/card/index',
};

/** True for a page that says in another language what an English one says. */
export const isTranslation = (path: string): boolean =>
  LANGUAGES.some(({ home }) => home !== '' && path.startsWith(`${home}/`));

/** The same page in every language it stands in; empty for a page that is in English alone. */
export function sameInLanguages(path: string, home: string): (Language & { href: string })[] {
  const page = path.slice(home.length);
  if (!(page in TRANSLATED)) return [];
  return LANGUAGES.map((language) => ({ ...language, href: language.home + page }));
}

/** Builds the translated pages alone. */
export function translatedPages(language: string): AstroIntegration {
  const { home } = LANGUAGES.find(({ tag }) => tag === language)!;
  return {
    name: 'translated-pages',
    hooks: {
      'astro:config:setup': ({ injectRoute }) => {
        for (const [pattern, page] of Object.entries(TRANSLATED)) {
          injectRoute({ pattern: home + pattern, entrypoint: `./site/pages/${page}.astro` });
        }
      },
    },
  };
}
