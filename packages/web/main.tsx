import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/App.tsx';
import { Refused } from './client/request.ts';

const queries = new QueryClient({
  defaultOptions: {
    // A server on this machine is reached without any network.
    queries: {
      networkMode: 'always',
      staleTime: 5_000,
      retry: (count, error) => !(error instanceof Refused) && count < 2,
    },
    mutations: { networkMode: 'always' },
  },
});

// Without it the workbench works all the same, as long as the server can be reached.
if (import.meta.env.PROD) navigator.serviceWorker?.register('/offline.js').catch(() => undefined);

const place = document.getElementById('workbench');
if (place === null) throw new Error('the page has no place for the workbench');
createRoot(place).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);
