import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { afterBuild } from './site/build/after.ts';
import { onlyWithNotice } from './site/build/shipped.ts';
import { outOfLanguage } from './site/build/translation.ts';
import { spoken, translatedPages } from './site/language.ts';
import { maths } from './site/markdown/maths.ts';

// Nothing about a build, or about who runs it, leaves the machine.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

// Another language is a second, small build, laid into the first.
const LANGUAGE = process.env.HANDBOOK_LANGUAGE ?? 'en';
const english = LANGUAGE === 'en';

export default defineConfig({
  srcDir: english ? './site' : './site/translated',
  publicDir: english ? './site/public' : './site/translated/public',
  outDir: english ? './dist' : outOfLanguage(LANGUAGE),
  // Each language remembers its own build: a shared memory would be thrown away at every turn.
  cacheDir: english ? './node_modules/.astro' : `./node_modules/.astro-${LANGUAGE}`,
  output: 'static',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  integrations: [preact(), mdx(), english ? afterBuild() : translatedPages(LANGUAGE)],
  markdown: {
    // Code colouring writes `style` attributes, which the policy below forbids.
    syntaxHighlight: false,
    processor: satteri({ features: { math: true }, hastPlugins: [maths] }),
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'self'",
      ],
    },
  },
  vite: {
    plugins: [spoken(LANGUAGE), onlyWithNotice()],
    environments: {
      client: {
        // Half of the pages with script share what is in this file: by itself the builder makes twice as
        // many files, small ones, and all of them together are larger.
        build: {
          rolldownOptions: {
            output: {
              codeSplitting: {
                groups: [
                  {
                    name: 'shared',
                    minShareCount: 30,
                    // In a file of its own: the folder for double-click puts another in its place.
                    test: (id) => !id.includes('vite/preload-helper'),
                  },
                ],
              },
            },
          },
        },
      },
    },
    build: {
      // The floor's browsers reach back this far.
      target: ['chrome109', 'firefox115'],
      cssTarget: ['chrome109', 'firefox115'],
      // The policy allows fonts from the site only, never from a data address.
      assetsInlineLimit: 0,
    },
  },
});
