/** Which design is open in which room, as the address says: `#/` or `#/design/ID/ROOM`. */
import type { RoomId } from "$/rooms/rooms";

class Route {
  id = $state<string | null>(null);
  room = $state<RoomId | null>(null);

  constructor() {
    this.read();
    addEventListener("hashchange", () => this.read());
  }

  go(id: string | null, room: RoomId = "quilt"): void {
    location.hash = id === null ? "#/" : `#/design/${encodeURIComponent(id)}/${room}`;
  }

  href(id: string | null, room: RoomId = "quilt"): string {
    return id === null ? "#/" : `#/design/${encodeURIComponent(id)}/${room}`;
  }

  private read(): void {
    const [, what, id, room] = location.hash.split("/");
    const isDesign = what === "design" && !!id;
    this.id = isDesign ? decodeURIComponent(id) : null;
    this.room = isDesign ? ((room as RoomId | undefined) ?? "quilt") : null;
  }
}

export const route = new Route();
