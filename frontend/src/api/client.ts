/** The way to the server. Every request brings the token of this run; a fault is told in the server's own sentence. */
import type { Act, FiguresView, Outcome, PaperView, QuiltView, Refused, Schemas, StartView } from "./shapes";

const KEPT = "studio-token";

function toldBy(hash: string): URLSearchParams {
  return new URLSearchParams(hash.replace(/^#\/?/, ""));
}

/**
 * The address of the first visit ends in `#token=…`, and may name a design to open. The token is kept for as long as this
 * window lives, and taken out of the address, so that none is left in a history or a bookmark.
 */
function readToken(): string {
  if (typeof location === "undefined") return "";
  const told = toldBy(location.hash);
  const token = told.get("token");
  if (token === null) return sessionStorage.getItem(KEPT) ?? "";
  sessionStorage.setItem(KEPT, token);
  const design = told.get("design");
  history.replaceState(null, "", design ? `#/design/${encodeURIComponent(design)}/quilt` : "#/");
  return token;
}

const token = readToken();
// A whole address that is put into a window which shows the studio differs in its last part alone, and loads nothing.
if (typeof addEventListener !== "undefined") {
  addEventListener("hashchange", () => {
    if (toldBy(location.hash).has("token")) location.reload();
  });
}
/** Whether the page was opened without the key that its address ends with: then nothing can be asked. */
export const isKeyless = token === "";

/** A request that the server refused: what is so, and what to do instead. */
export class RefusedError extends Error {
  constructor(
    readonly status: number,
    readonly fault: Refused,
  ) {
    super([fault.detail, fault.remedy].filter(Boolean).join(" "));
  }
}

async function faultOf(answer: Response): Promise<Refused> {
  try {
    const told = (await answer.json()) as { detail: unknown };
    if (typeof told.detail === "string") return told as Refused;
  } catch {
    // What is no JSON has no sentence of ours in it.
  }
  return { detail: `${answer.status} ${answer.statusText}`, remedy: "", can_anyway: false, findings: [] };
}

export async function ask<T>(method: string, path: string, body?: unknown): Promise<T> {
  const headers: Record<string, string> = { "Studio-Token": token };
  const told: RequestInit = { method, headers };
  if (body instanceof Blob) told.body = body; // a file is sent as it is
  else if (body !== undefined) {
    headers["Content-Type"] = "application/json";
    told.body = JSON.stringify(body);
  }
  const answer = await fetch(`/api${path}`, told);
  if (!answer.ok) throw new RefusedError(answer.status, await faultOf(answer));
  return answer.status === 204 ? (undefined as T) : ((await answer.json()) as T);
}

export const get = <T>(path: string): Promise<T> => ask<T>("GET", path);
export const post = <T>(path: string, body: unknown = {}): Promise<T> => ask<T>("POST", path, body);

/** Return the address of a picture or a stream of news, which take the token as a query. */
export function address(path: string, query: Record<string, string | number> = {}): string {
  const asked = new URLSearchParams({ ...query, token } as Record<string, string>);
  return `/api${path}?${asked.toString()}`;
}

const of = (id: string): string => `/designs/${encodeURIComponent(id)}`;

export const beginnings = {
  start: () => get<StartView>("/start"),
  comesTo: (made: Partial<Schemas["NewDesign"]>) => post<Schemas["BegunView"]>("/start", made),
  folder: (path: string) => get<Schemas["FolderView"]>(`/folder?path=${encodeURIComponent(path)}`),
  picture: (of: Record<string, string>) => address("/picture", of),
};

export const designs = {
  open: (what: Record<string, unknown>) => post<{ id: string }>("/designs", what),
  paper: (id: string) => get<PaperView>(of(id)),
  quilt: (id: string) => get<QuiltView>(`${of(id)}/quilt`),
  figures: (id: string) => get<FiguresView>(`${of(id)}/figures`),
  act: (id: string, revision: number, act: Act) => post<Outcome>(`${of(id)}/acts`, { revision, act }),
  undo: (id: string, revision: number) => post<Outcome>(`${of(id)}/undo`, { revision }),
  redo: (id: string, revision: number) => post<Outcome>(`${of(id)}/redo`, { revision }),
  save: (id: string, where: { path?: string; replace?: boolean; make_folder?: boolean } = {}) =>
    post<PaperView>(`${of(id)}/save`, where),
  keep: (id: string, revision: number, keep: "ours" | "theirs") => post<Outcome>(`${of(id)}/outside`, { revision, keep }),
  duplicate: (id: string, path: string, make_folder: boolean) => post<{ id: string }>(`${of(id)}/duplicate`, { path, make_folder }),
  close: (id: string) => post<unknown>(`${of(id)}/close`),
  news: (id: string) => address(`${of(id)}/news`),
};
