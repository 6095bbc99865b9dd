import { posix } from 'node:path';
import { type Breach, lineAt, reportBreaches } from './breach.ts';
import { isMain, projectFiles, readSources, type Source } from './sources.ts';

/** A page's text without its fenced code, whose lines stay so that places stay. */
function prose(text: string): string {
  return text.replace(/^```[\s\S]*?^```/gm, (code) => code.replace(/[^\n]/g, ' '));
}

/** The anchors that a page offers: one for each heading, made as hosts of repositories make them. */
function anchorsOf(text: string): Set<string> {
  const headings = [...prose(text).matchAll(/^#+ +(.+)$/gm)];
  return new Set(
    headings.map(([, heading = '']) =>
      heading
        .toLowerCase()
        .replace(/[^\p{L}\p{N}\s_-]/gu, '')
        .trim()
        .replaceAll(' ', '-'),
    ),
  );
}

/**
 * Links of pages that lead nowhere within the project: to a path that is neither file nor folder, or to a
 * heading that the page does not have. Links to other sites are not followed.
 */
export function deadLinks(pages: readonly Source[], files: readonly string[]): Breach[] {
  const known = new Set(files.flatMap((path) => [path, ...foldersAbove(path)]));
  const anchors = new Map(pages.map(({ path, text }) => [path, anchorsOf(text)]));
  return pages.flatMap((page) =>
    linksOf(page).flatMap(({ target, start }) => {
      const [path = '', anchor] = target.split('#');
      const file = path === '' ? page.path : posix.join(posix.dirname(page.path), decodeURI(path));
      const at = { path: page.path, line: lineAt(page.text, start) };
      if (!known.has(file.replace(/\/$/, '')))
        return [{ ...at, rule: 'dead-link', message: `${target} is no file of the project` }];
      if (anchor === undefined || anchors.get(file)?.has(anchor) !== false) return [];
      return [{ ...at, rule: 'dead-anchor', message: `${file} has no heading for #${anchor}` }];
    }),
  );
}

function foldersAbove(path: string): string[] {
  const parts = path.split('/');
  return parts.map((_, length) => parts.slice(0, length).join('/')).filter((folder) => folder !== '');
}

function linksOf(page: Source): { target: string; start: number }[] {
  const links = [...prose(page.text).matchAll(/\]\(([^)\s]+)(?:\s+"[^"]*")?\)/g)];
  return links
    .map((match) => ({ target: match[1] ?? '', start: match.index }))
    .filter(({ target }) => !/^[a-z][a-z0-9+.-]*:/i.test(target));
}

if (isMain(import.meta.url)) {
  const pages = readSources((path) => path.endsWith('.md'));
  process.exitCode = reportBreaches('links', pages.length, deadLinks(pages, projectFiles()));
}
