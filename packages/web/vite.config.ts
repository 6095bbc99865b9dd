import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** In `npm run dev` the records are those of a server that runs beside it. */
const recordsServer = 'http://127.0.0.1:4747';

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react()],
  // What the page may load is `self` alone: nothing is written into it as data.
  build: { target: 'es2023', assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  worker: { format: 'es' },
  server: { proxy: { '/api': recordsServer, '/attachments': recordsServer } },
});
