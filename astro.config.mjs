import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { afterBuild } from './site/build/after.ts';
import { maths } from './site/markdown/maths.ts';

// Nothing about a build, or about who runs it, leaves the machine.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

export default defineConfig({
  srcDir: './site',
  publicDir: './site/public',
  outDir: './dist',
  output: 'static',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  integrations: [preact(), mdx(), afterBuild()],
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
    build: {
      // The floor's browsers reach back this far.
      target: ['chrome109', 'firefox115'],
      cssTarget: ['chrome109', 'firefox115'],
      // The policy allows fonts from the site only, never from a data address.
      assetsInlineLimit: 0,
    },
  },
});
