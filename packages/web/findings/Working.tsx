import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printDay } from '@fettle/engine/quantities/printShort.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { type Print, printer } from '@fettle/workflows/printing.ts';
import { assumedLines } from '@fettle/workflows/report/assumed.ts';
import { bedsKey, bedsTable, noBeds, orderSentence } from '@fettle/workflows/report/beds.ts';
import { dyeLines } from '@fettle/workflows/report/dye.ts';
import {
  chemicalLines,
  claimLines,
  costSentence,
  testLines,
  warningLines,
} from '@fettle/workflows/report/lines.ts';
import { levelsTable, pressureTable, siteLines } from '@fettle/workflows/report/site.ts';
import { bypassSentence, headTable, loopSentence, routesTable } from '@fettle/workflows/report/water.ts';
import { type ReactNode, useEffect } from 'react';
import { Tabled } from './Tabled.tsx';
import { openForPrint, workingElementId, workingNames } from './workingSections.ts';

/** A part of the working, folded till it is wanted. */
function Part({ id, name, children }: { id: string; name: string; children: ReactNode }) {
  return (
    <details className="working" id={workingElementId(id)}>
      <summary>{name}</summary>
      {children}
    </details>
  );
}

/** A part of lines; none where there is nothing to tell. */
function Lines({ id, name, lines }: { id: string; name: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <Part id={id} name={name}>
      <ul className="lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </Part>
  );
}

function Beds({ job, print }: { readonly job: AssessedJob; readonly print: Print }) {
  const { beds, orderShares, carries } = job.assessment;
  if (beds.length === 0) return <p>{noBeds}</p>;
  return (
    <>
      <Tabled
        table={bedsTable(job, print)}
        caption={`Beds as the water meets them, on ${printDay(carries.day.dayS)} after cleaning`}
      />
      <p className="soft">{bedsKey}</p>
      <p>{orderSentence(orderShares)}</p>
    </>
  );
}

/** Leak side, levels, water on the floor and current; none where there is nothing to tell. */
function Site({ assessment, print }: { readonly assessment: Assessment; readonly print: Print }) {
  const lines = siteLines(assessment, print);
  const { pressures } = assessment.site;
  const levels = levelsTable(assessment, print);
  if (lines.length + pressures.length === 0) return null;
  return (
    <Part id="site" name={workingNames.site}>
      {pressures.length > 0 && (
        <Tabled table={pressureTable(assessment, print)} caption="Pressure against the air, pump running" />
      )}
      {levels !== undefined && (
        <Tabled table={levels} caption="Water in the box, over its floor; clean media" />
      )}
      <ul className="lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </Part>
  );
}

/** Where the figures of the findings come from: the same tables and sentences that the command prints. */
export function Working({ job, system }: { readonly job: AssessedJob; readonly system: System }) {
  useEffect(openForPrint, []);
  const print = printer(system);
  const { assessment, model } = job;
  return (
    <section aria-labelledby="working">
      <h3 id="working">Working</h3>
      <Part id="routes" name={workingNames.routes}>
        <Tabled table={routesTable(job)} caption="Ways of the water from inlet to outlet" />
        <p>{bypassSentence(job)}</p>
      </Part>
      <Part id="head" name={workingNames.head}>
        <Tabled table={headTable(assessment, print)} caption="The pump’s head, clean" />
        <p>{loopSentence(job, print)}</p>
      </Part>
      <Part id="beds" name={workingNames.beds}>
        <Beds job={job} print={print} />
      </Part>
      <Lines id="chemical" name={workingNames.chemical} lines={chemicalLines(job, print)} />
      <Lines id="tests" name={workingNames.tests} lines={[...testLines(job, print), ...dyeLines(job)]} />
      <Lines id="claims" name={workingNames.claims} lines={claimLines(job)} />
      <Site assessment={assessment} print={print} />
      <Part id="money" name={workingNames.money}>
        <p>{costSentence(job)}</p>
      </Part>
      <Lines id="assumed" name="Assumed, with wide doubt" lines={assumedLines(model, print)} />
      <Lines id="warnings" name="Warnings" lines={warningLines(job)} />
      <p className="soft">Model edition {assessment.edition}. How sure its figures are is told above.</p>
    </section>
  );
}
