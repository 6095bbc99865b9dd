import { z } from 'zod';
import { assessmentSchema } from './assessment.ts';
import { checkSchema } from './check.ts';
import { claimsSchema } from './claims.ts';
import { fadedSchema } from './faded.ts';
import { forecastSchema } from './forecast.ts';
import { plansSchema } from './plans.ts';
import { problemsSchema } from './problems.ts';
import { reckoningSchema } from './reckoning.ts';
import { residenceSchema } from './residence.ts';
import { tankSchema } from './tank.ts';

const results = {
  assessment: assessmentSchema,
  forecast: forecastSchema,
  tank: tankSchema,
  plans: plansSchema,
  claims: claimsSchema,
  faded: fadedSchema,
  check: checkSchema,
  reckoning: reckoningSchema,
  residence: residenceSchema,
  problems: problemsSchema,
} as const;

/** JSON Schema of every result that a command prints with `--json`, each under its name in `$defs`. */
export const resultsJsonSchemaText = (): string => {
  const definitions = Object.fromEntries(
    Object.entries(results).map(([name, schema]) => {
      const { $schema: _, ...definition } = z.toJSONSchema(schema);
      return [name, definition];
    }),
  );
  const whole = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Results of Fettle',
    description:
      'What assess, forecast, plan, residence, claims, faded, check and reckon print with --json, and the problems of bad input.',
    $defs: definitions,
  };
  return `${JSON.stringify(whole, null, 2)}\n`;
};
