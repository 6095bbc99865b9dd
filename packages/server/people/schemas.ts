import { roles } from '@fettle/store/contract/people.ts';
import { z } from '@hono/zod-openapi';

export const roleSchema = z
  .enum(roles)
  .openapi({ description: 'technician: all; helper: work on jobs; reader: look.' });

const name = z.string().max(200).openapi({ example: 'ines' });
const password = z.string().max(1000);

export const signInSchema = z.strictObject({ name, password }).openapi('SignIn');

export const sessionSchema = z
  .strictObject({
    share: z
      .boolean()
      .openapi({ description: 'Whether the server is open beyond its machine and asks for a sign-in.' }),
    signedIn: z.boolean(),
    name: z.string().optional(),
    role: roleSchema.optional(),
  })
  .openapi('Session');

export const newPasswordSchema = z
  .strictObject({ password: password.openapi({ description: 'The one until now.' }), newPassword: password })
  .openapi('NewPassword');

export const newAccountSchema = z
  .strictObject({ name, role: z.string().max(40), password })
  .openapi('NewAccount');

export const accountSchema = z
  .strictObject({
    name: z.string(),
    role: roleSchema,
    createdAt: z.string(),
    closedAt: z.string().optional(),
  })
  .openapi('Account');

export const accountChangeSchema = z
  .strictObject({
    role: z.string().max(40).optional(),
    password: password.optional(),
    closed: z
      .literal(true)
      .optional()
      .openapi({ description: 'Closes it for good; its name stays in the history.' }),
  })
  .refine((change) => Object.keys(change).length === 1, 'One of role, password and closed at a time.')
  .openapi('AccountChange');

const deedSchema = z
  .strictObject({
    id: z.int(),
    at: z.string(),
    who: z.string(),
    what: z.string(),
    job: z.int().optional(),
    about: z.string().optional(),
    from: z.string().optional(),
  })
  .openapi('Deed');

export const accountsSchema = z.strictObject({ accounts: z.array(accountSchema) }).openapi('Accounts');

export const deedsSchema = z.strictObject({ deeds: z.array(deedSchema) }).openapi('Deeds');
