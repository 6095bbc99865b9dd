import { html } from 'hono/html';
import { type Markup, page } from '../pages/page.ts';

interface Shown {
  /** What was typed as the name. */
  readonly name?: string;
  /** Why the sign-in before was refused. */
  readonly fault?: string;
}

const faultOf = (fault: string | undefined): Markup | '' =>
  fault === undefined ? '' : html`<p class="fault" id="fault" role="alert">${fault}</p>`;

const described = (fault: string | undefined): Markup | '' =>
  fault === undefined ? '' : html`aria-describedby="fault" aria-invalid="true"`;

/** The page on which a person signs in. */
export const signInPage = ({ name = '', fault }: Shown): Markup =>
  page({
    title: fault === undefined ? 'Sign in' : 'Not signed in',
    body: html`<main class="narrow">
<h1>Sign in</h1>
<p>These records are kept with Fettle. Who has no account asks the technician for one.</p>
<form class="entry" method="post" action="/sign-in">
${faultOf(fault)}
<p class="field"><label for="name">Name</label>
<input id="name" name="name" value="${name}" autocomplete="username" autocapitalize="none" spellcheck="false" maxlength="200" required ${described(fault)}></p>
<p class="field"><label for="password">Password</label>
<input id="password" name="password" type="password" autocomplete="current-password" maxlength="1000" required ${described(fault)}></p>
<p><button type="submit">Sign in</button></p>
</form>
</main>`,
  });
