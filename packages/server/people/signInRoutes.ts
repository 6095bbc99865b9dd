import type { Hono } from 'hono';
import { addressOf } from '../guard/address.ts';
import { readForm } from '../pages/form.ts';
import type { Environment, Services } from '../services.ts';
import { giveToken, sessionToken } from './cookie.ts';
import { signOut, tooManyTries } from './sessionRoutes.ts';
import { signIn } from './signIn.ts';
import { signInPage } from './signInPage.ts';
import type { Throttle } from './throttle.ts';

/** The page to sign in and the forms to sign in and out. Where they lead is fixed; nothing in the request names it. */
export function addSignInPage(
  app: Hono<Environment>,
  services: Services & { readonly throttle: Throttle },
): void {
  app.get('/sign-in', (context) =>
    services.config.share ? context.html(signInPage({})) : context.redirect('/', 303),
  );
  app.post('/sign-in', async (context) => {
    if (!services.config.share) return context.redirect('/', 303);
    const { name = '', password = '' } = await readForm(context);
    const attempt = { name, password, from: addressOf(context), before: sessionToken(context) };
    const done = await signIn(services, attempt);
    if (done.ok) {
      giveToken(context, done.token);
      return context.redirect('/', 303);
    }
    if (done.reason === 'wrong') {
      return context.html(signInPage({ name, fault: 'Name or password is wrong.' }), 401);
    }
    context.header('Retry-After', String(done.waitS));
    return context.html(signInPage({ name, fault: tooManyTries(done.waitS).message }), 429);
  });
  app.post('/sign-out', async (context) => {
    await signOut(context, services);
    return context.redirect('/sign-in', 303);
  });
}
