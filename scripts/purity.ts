import { type Breach, lineAt } from './breach.ts';
import { walkSource } from './parsed.ts';
import type { Source } from './sources.ts';

/** Members that read the clock or draw chance: what they give differs from run to run. */
const restlessMembers = new Set([
  'Date.now',
  'Math.random',
  'performance.now',
  'crypto.randomUUID',
  'crypto.getRandomValues',
]);

/**
 * What makes a source give another answer on another run: the clock, chance, and variables of the module
 * that can be assigned anew.
 */
export function impurities(source: Source): Breach[] {
  const breaches: Breach[] = [];
  const report = (rule: string, start: number, message: string) =>
    breaches.push({ path: source.path, line: lineAt(source.text, start), rule, message });
  walkSource(source, {
    MemberExpression: (node) => {
      if (node.object.type !== 'Identifier') return;
      const { property } = node;
      const member =
        property.type === 'Identifier' ? property.name : property.type === 'Literal' && property.value;
      const name = `${node.object.name}.${member}`;
      if (restlessMembers.has(name)) report('engine-restless', node.start, `${name} differs from run to run`);
    },
    NewExpression: (node) => {
      if (node.callee.type === 'Identifier' && node.callee.name === 'Date' && node.arguments.length === 0)
        report('engine-restless', node.start, 'new Date() reads the clock');
    },
    CallExpression: (node) => {
      if (node.callee.type === 'Identifier' && node.callee.name === 'Date')
        report('engine-restless', node.start, 'Date() reads the clock');
    },
    Program: (node) => {
      for (const statement of node.body) {
        const declared = statement.type === 'ExportNamedDeclaration' ? statement.declaration : statement;
        if (declared?.type === 'VariableDeclaration' && declared.kind !== 'const')
          report(
            'engine-state',
            declared.start,
            `a module's ${declared.kind} is state shared by all callers`,
          );
      }
    },
  });
  return breaches;
}
