import { type Breach, reportBreaches } from './breach.ts';
import { importCycles } from './cycles.ts';
import { importGraph, targetPath } from './importGraph.ts';
import { engineRooms, packageLayers, placeOf } from './layerRules.ts';
import { type ImportedModule, importedModules } from './parsed.ts';
import { impurities } from './purity.ts';
import { isMain, readSources, type Source } from './sources.ts';

/** What the layer check found, with how much it looked at: a check that saw nothing has not passed. */
export interface LayerReport {
  readonly breaches: readonly Breach[];
  readonly filesLooked: number;
  readonly importsLooked: number;
}

/**
 * Holds every import of the given sources against the house's order (`layerRules.ts`), finds import cycles,
 * and finds clock, chance and module state in the engine.
 */
export function checkLayers(sources: readonly Source[]): LayerReport {
  const breaches: Breach[] = [];
  let importsLooked = 0;
  for (const source of sources) {
    const imports = importedModules(source);
    importsLooked += imports.length;
    breaches.push(...placeBreaches(source.path));
    for (const imported of imports) {
      const breach = importBreach(source.path, imported);
      if (breach !== undefined) breaches.push({ path: source.path, line: imported.line, ...breach });
    }
    if (placeOf(source.path).packageName === 'engine') breaches.push(...impurities(source));
  }
  for (const cycle of importCycles(importGraph(sources))) breaches.push(cycleBreach(cycle));
  return { breaches, filesLooked: sources.length, importsLooked };
}

function cycleBreach(cycle: readonly string[]): Breach {
  const [first = ''] = cycle;
  return { path: first, line: 1, rule: 'import-cycle', message: [...cycle, first].join(' imports ') };
}

/** A package or room that the order does not name could import anything: it is reported itself. */
function placeBreaches(path: string): Breach[] {
  const { packageName, room } = placeOf(path);
  if (packageName === undefined) return [];
  if (packageLayers[packageName] === undefined)
    return [
      { path, line: 1, rule: 'unknown-package', message: `the order of packages lacks ${packageName}` },
    ];
  if (packageName === 'engine' && (room === undefined || roomRank(room) === -1))
    return [
      {
        path,
        line: 1,
        rule: 'unknown-room',
        message: `the engine's order of rooms lacks ${room ?? 'its root'}`,
      },
    ];
  return [];
}

function roomRank(room: string | undefined): number {
  return room === undefined ? -1 : engineRooms.indexOf(room);
}

type ImportBreach = Pick<Breach, 'rule' | 'message'>;

function importBreach(from: string, { specifier }: ImportedModule): ImportBreach | undefined {
  const place = placeOf(from);
  if (place.packageName === undefined) return undefined;
  if (specifier === undefined) return computedImport(place.packageName);
  const target = targetPath(from, specifier);
  if (target === undefined) return outsideImport(from, specifier);
  return packageBreach(from, target, specifier) ?? roomBreach(from, target) ?? testingBreach(from, target);
}

function computedImport(packageName: string): ImportBreach | undefined {
  if (packageName !== 'engine') return undefined;
  return { rule: 'engine-outside', message: 'the engine imports nothing that is named only at run time' };
}

function outsideImport(from: string, specifier: string): ImportBreach | undefined {
  const { packageName, isTest } = placeOf(from);
  if (packageName !== 'engine' || isTest) return undefined;
  return { rule: 'engine-outside', message: `the engine imports nothing from outside, not ${specifier}` };
}

function packageBreach(from: string, target: string, specifier: string): ImportBreach | undefined {
  const { packageName = '' } = placeOf(from);
  const { packageName: targetPackage } = placeOf(target);
  if (targetPackage === packageName) return undefined;
  if (targetPackage === undefined)
    return { rule: 'leaves-packages', message: `packages import only packages, not ${target}` };
  if (specifier.startsWith('.'))
    return { rule: 'by-path', message: `other packages are imported by name: @fettle/${targetPackage}/…` };
  const isOpen = (allowed: string): boolean =>
    allowed === targetPackage || target.startsWith(`packages/${allowed}/`);
  if (packageLayers[packageName]?.some(isOpen)) return undefined;
  return { rule: 'package-order', message: `${packageName} may not import ${targetPackage}` };
}

function roomBreach(from: string, target: string): ImportBreach | undefined {
  const { packageName, room } = placeOf(from);
  if (packageName !== 'engine') return undefined;
  const { room: targetRoom } = placeOf(target);
  if (roomRank(targetRoom) <= roomRank(room)) return undefined;
  return { rule: 'room-order', message: `${room} may not import ${targetRoom}, which stands above it` };
}

function testingBreach(from: string, target: string): ImportBreach | undefined {
  if (placeOf(from).isTest || !placeOf(target).isTest) return undefined;
  return { rule: 'for-tests', message: `${target} serves tests alone` };
}

if (isMain(import.meta.url)) {
  const report = checkLayers(readSources((path) => /\.tsx?$/.test(path)));
  console.log(`layers: ${report.importsLooked} imports`);
  process.exitCode = reportBreaches('layers', report.filesLooked, report.breaches);
}
