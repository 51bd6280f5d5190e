// Made from openapi.json by `npm run types`; do not edit.
export interface paths {
    "/api/acts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Acts
         * @description Return every act that there is.
         */
        get: operations["acts"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Open Design
         * @description Open a design.
         */
        post: operations["open_design"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Design
         * @description Return a design as it is.
         */
        get: operations["design"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/acts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Act
         * @description Do an act.
         */
        post: operations["act"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/blocks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Blocks
         * @description Return the drafting table.
         */
        get: operations["blocks"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/booklet": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Booklet
         * @description Return the booklet, without its pages' pictures; or, sooner, only what stands before the work.
         */
        get: operations["booklet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/booklet/{page}.png": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Booklet Page
         * @description Return a page as it will print, about so many pixels across.
         */
        get: operations["booklet_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/close": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Close
         * @description Close it; all that was done to it is kept.
         */
        post: operations["close"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/cloth": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Cloth
         * @description Return the fabrics.
         */
        get: operations["cloth"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/cutting": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Cutting
         * @description Return the plans: the quick ones until the proved ones are in.
         */
        get: operations["cutting"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/duplicate": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Duplicate
         * @description Copy it into a new file, and open that.
         */
        post: operations["duplicate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/figures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Figures
         * @description Return the figures: the quick ones until the proved plans are in.
         */
        get: operations["figures"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/files": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Files
         * @description Return what was published last.
         */
        get: operations["files"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/files.zip": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Files Zip
         * @description Return all of it as one archive.
         */
        get: operations["files_zip"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/files/{name}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * File
         * @description Return one of its files.
         */
        get: operations["file"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/find": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Find
         * @description Return the best settings of a kind. A search that another one overtakes, or an edit, ends as stale.
         */
        post: operations["find"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/find/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Cancel Search
         * @description End what is being searched for.
         */
        post: operations["cancel_search"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/finder": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Finder
         * @description Return what the finder can be asked for.
         */
        get: operations["finder"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/look": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Look
         * @description Return the quilt as an act would leave it; nothing is changed.
         */
        post: operations["look"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/making": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Making
         * @description Return the work, with what is ticked off.
         */
        get: operations["making"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/making/tick": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Tick
         * @description Tick something off, or take its tick away.
         */
        post: operations["tick"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/making/untick": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Untick
         * @description Take all ticks away, to begin anew.
         */
        post: operations["untick"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/news": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * News
         * @description Return a stream of what happens to it: revision, saved, figures, plans, findings, outside, window, publish.
         */
        get: operations["news"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/outline": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Outline
         * @description Return what a drawing in SVG holds.
         */
        post: operations["outline"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/outside": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Keep
         * @description Go on with one of two texts, after the file was changed by someone else.
         */
        post: operations["keep"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/palette": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Palette
         * @description Return the colours of a photo, or of what is cut out of it, and which fabrics could have them.
         */
        post: operations["palette"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/photo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Photo
         * @description Take in a photo of cloth, and keep it beside the design.
         */
        post: operations["photo"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/photo/{file}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Photo File
         * @description Return a photo that the design names, or that was taken in for it.
         */
        get: operations["photo_file"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/proof": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Proof
         * @description Return the findings, with the rehearsal if that is wanted.
         */
        get: operations["proof"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/publish": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Published
         * @description Return how far it has come.
         */
        get: operations["published"];
        put?: never;
        /**
         * Publish
         * @description Begin to publish; the news tell how it goes.
         */
        post: operations["publish"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/publish/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Cancel
         * @description Call it off.
         */
        post: operations["cancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/quilt": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Quilt
         * @description Return all that is drawn of the quilt.
         */
        get: operations["quilt"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/redo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Redo
         * @description Redo what was undone last.
         */
        post: operations["redo"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/rehearsal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Rehearsal
         * @description Return the list of steps, and what the rehearsal came to.
         */
        get: operations["rehearsal"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/rehearsal/{step}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Rehearsed
         * @description Return what is on the table after a step.
         */
        get: operations["rehearsed"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/rehearse": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Rehearsing
         * @description Return how far it has come.
         */
        get: operations["rehearsing"];
        put?: never;
        /**
         * Rehearse
         * @description Begin to rehearse; the news tell how it goes.
         */
        post: operations["rehearse"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/rehearse/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Cancel Rehearsal
         * @description Call it off.
         */
        post: operations["cancel_rehearsal"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/save": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Save
         * @description Save it in its file, or in another.
         */
        post: operations["save"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/seams": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Seams
         * @description Return what is laid over the quilt: joins, flow, bulk, pressing.
         */
        get: operations["seams"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/sizes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Sizes
         * @description Return what each known bed takes.
         */
        get: operations["sizes"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/templates": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Templates
         * @description Return the pages of templates at their true size.
         */
        get: operations["templates"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/undo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Undo
         * @description Undo the last step.
         */
        post: operations["undo"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/designs/{identity}/values": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Values
         * @description Return the values of the tables that are set in fields.
         */
        get: operations["values"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/folder": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Folder
         * @description Return what lies in a folder, or in that of a file; the home folder where none is named.
         */
        get: operations["folder"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/picture": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Picture
         * @description Return the sewn top of an example, a known setting or a recent design, small.
         */
        get: operations["picture"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/start": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Start
         * @description Return what there is to begin with.
         */
        get: operations["start"];
        put?: never;
        /**
         * Come To
         * @description Return what a new design would come to. Nothing is begun.
         */
        post: operations["come_to"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /**
         * ActName
         * @description An act by its name, and the keys that do it.
         */
        ActName: {
            /** Key */
            key: string;
            /** Name */
            name: string;
        };
        /**
         * ActOrder
         * @description An act, and the revision that it is to be done to.
         */
        ActOrder: {
            /** Act */
            act: components["schemas"]["TurnCells"] | components["schemas"]["LayCells"] | components["schemas"]["FillSection"] | components["schemas"]["StampWords"] | components["schemas"]["SwapColourways"] | components["schemas"]["AddSection"] | components["schemas"]["RemoveSection"] | components["schemas"]["RenameSection"] | components["schemas"]["ResizeMap"] | components["schemas"]["WriteOut"] | components["schemas"]["LayOtherwise"] | components["schemas"]["LayBeside"] | components["schemas"]["AddPart"] | components["schemas"]["RemovePart"] | components["schemas"]["MovePart"] | components["schemas"]["AddBorder"] | components["schemas"]["RemoveBorder"] | components["schemas"]["MoveBorder"] | components["schemas"]["PlaceMotif"] | components["schemas"]["MoveMotif"] | components["schemas"]["OrderMotif"] | components["schemas"]["RemoveMotif"] | components["schemas"]["AddRecipe"] | components["schemas"]["CopyRecipe"] | components["schemas"]["RenameRecipe"] | components["schemas"]["RemoveRecipe"] | components["schemas"]["AddShape"] | components["schemas"]["RemoveShape"] | components["schemas"]["OrderShape"] | components["schemas"]["TakeOutline"] | components["schemas"]["AddFabric"] | components["schemas"]["RemoveFabric"] | components["schemas"]["RenameFabric"] | components["schemas"]["SwapFabrics"] | components["schemas"]["TakeColours"] | components["schemas"]["SetPhoto"] | components["schemas"]["AddColourway"] | components["schemas"]["RemoveColourway"] | components["schemas"]["DecideStrips"] | components["schemas"]["FreeStrips"] | components["schemas"]["TakeSetting"] | components["schemas"]["AddSize"] | components["schemas"]["RemoveSize"] | components["schemas"]["RenameSize"] | components["schemas"]["ChangeUnits"] | components["schemas"]["Put"] | components["schemas"]["Puts"] | components["schemas"]["Write"];
            /** Revision */
            revision: number;
        };
        /**
         * AddBorder
         * @description Add a border round a section, or round all (`centre`), at a place counted from the inside.
         *
         *     Plain: a fabric and a width. Pieced: two sections, and what fills the corners. Coping: a fabric and a size.
         */
        AddBorder: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Corners */
            corners?: string | null;
            /** Cornerstone */
            cornerstone?: string | null;
            /** Ends */
            ends?: string | null;
            /** Fabric */
            fabric?: string | null;
            /**
             * Kind
             * @default plain
             * @enum {string}
             */
            kind: "plain" | "pieced" | "coping";
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "add-border";
            /** Place */
            place?: number | null;
            /**
             * Section
             * @default centre
             */
            section: string;
            /** Sides */
            sides?: string | null;
            /** To */
            to?: [
                string,
                string
            ] | null;
            /** Width */
            width?: string | null;
        };
        /**
         * AddColourway
         * @description Add a colourway of a recipe, with the code given or the next that is free: cloth for each of its parts.
         */
        AddColourway: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Cloths */
            cloths?: {
                [key: string]: string;
            };
            /** Code */
            code?: string | null;
            /** First */
            first?: string | null;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "add-colourway";
            /** Recipe */
            recipe: string;
            /** Second */
            second?: string | null;
        };
        /**
         * AddFabric
         * @description Add a fabric, with the letter given or the next that is free.
         */
        AddFabric: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Called */
            called: string;
            /** Colour */
            colour: string;
            /** Letter */
            letter?: string | null;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "add-fabric";
            /**
             * Role
             * @default
             */
            role: string;
        };
        /**
         * AddPart
         * @description Add a section or unit to a line, or a strip of a fabric where a width is given.
         */
        AddPart: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "add-part";
            /** Part */
            part: string;
            /** Place */
            place: number;
            /** Section */
            section: string;
            /**
             * Turn
             * @default 0
             */
            turn: number;
            /** Width */
            width?: string | null;
        };
        /**
         * AddRecipe
         * @description Add a recipe of a kind, with sizes to begin from; of halves rejoined, the recipe whose halves they are.
         */
        AddRecipe: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * Cuts
             * @default both ways
             * @enum {string}
             */
            cuts: "none" | "down" | "across" | "both ways" | "one diagonal";
            /**
             * Kind
             * @enum {string}
             */
            kind: "circle cut both ways" | "shape cut both ways" | "shapes cut" | "halves rejoined";
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "add-recipe";
            /** Of */
            of?: string | null;
            /** Outline */
            outline?: string | null;
            /** Recipe */
            recipe: string;
        };
        /**
         * AddSection
         * @description Add a section of a kind, of so many rows and columns (or parts) of a unit, or a panel of a size.
         */
        AddSection: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Beside */
            beside?: ("above" | "right" | "below" | "left") | null;
            /**
             * Columns
             * @default 2
             */
            columns: number;
            /** Fabric */
            fabric: string;
            /** Height */
            height?: string | null;
            /**
             * Kind
             * @default straight
             * @enum {string}
             */
            kind: "straight" | "on point" | "columns" | "rows" | "panel";
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "add-section";
            /**
             * Rows
             * @default 2
             */
            rows: number;
            /** Section */
            section: string;
            /** Unit */
            unit: string;
            /** Width */
            width?: string | null;
        };
        /**
         * AddShape
         * @description Fuse a shape more on a master of shapes cut, on top; colourways give its part a fabric.
         */
        AddShape: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** At */
            at?: [
                string,
                string
            ] | null;
            /** Fabric */
            fabric: string;
            /** Inner */
            inner?: string | null;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "add-shape";
            /**
             * Outline
             * @default circle
             */
            outline: string;
            /** Part */
            part: string;
            /** Recipe */
            recipe: string;
            /**
             * Turn
             * @default 0
             */
            turn: number;
            /** Width */
            width: string;
        };
        /**
         * AddSize
         * @description Add a size: for a known bed with the repeats that fit it, or with what differs in it.
         */
        AddSize: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Bed */
            bed?: string | null;
            /** Changes */
            changes?: {
                [key: string]: components["schemas"]["JsonValue"];
            };
            /** Drop */
            drop?: string | null;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "add-size";
            /** Size */
            size: string;
        };
        /**
         * BedView
         * @description A known mattress, and its size as it is told in each of the units.
         */
        BedView: {
            /** Name */
            name: string;
            /** Sizes */
            sizes: {
                [key: string]: string;
            };
        };
        /**
         * BegunView
         * @description What a new design comes to: its finished size, how many units it has, and how far it hangs down from its bed.
         */
        BegunView: {
            /** Count */
            count: number;
            /** Foot */
            foot: string;
            /** Height */
            height: string;
            /** Pillows */
            pillows: string;
            /** Sides */
            sides: string;
            /** Width */
            width: string;
        };
        /**
         * BindingView
         * @description The binding that shows round the top.
         */
        BindingView: {
            /** Depth */
            depth: number;
            /** Fabric */
            fabric: string;
        };
        /**
         * BlocksView
         * @description All recipes of the file.
         */
        BlocksView: {
            /** Drafts */
            drafts: components["schemas"]["DraftView"][];
            /** Revision */
            revision: number;
        };
        /**
         * BookletView
         * @description The booklet: its paper in millimetres, its pages, its house style, and what makes it a draft.
         *
         *     `whole` is false where only the pages before the work are told.
         */
        BookletView: {
            /** Choices */
            choices: components["schemas"]["ChoiceView"][];
            /** Draft */
            draft: components["schemas"]["FindingView"][];
            /** Height */
            height: number;
            /** Pages */
            pages: components["schemas"]["PageView"][];
            /** Parts */
            parts: string[];
            /** Revision */
            revision: number;
            /** Whole */
            whole: boolean;
            /** Width */
            width: number;
        };
        /**
         * BorderName
         * @description A border of a section, from the inside, with its dotted key. `corners` is a kind of corner or a word of a map.
         */
        BorderName: {
            /** Corners */
            corners: string;
            /** Cornerstone */
            cornerstone: string;
            /** Ends */
            ends: string;
            /** Fabric */
            fabric: string;
            /** First */
            first: string;
            /** Key */
            key: string;
            /** Kind */
            kind: string;
            /** Sides */
            sides: string;
            /** To */
            to: [
                string,
                string
            ] | null;
            /** Width */
            width: string | null;
        };
        /**
         * BoxView
         * @description A part of the top that is no unit, in its own frame from 0, 0 to width, height: a section, border, square.
         *
         *     `holder` is the section in whose map it stands, at `cell`; `inset` how deep the strips of a border are.
         */
        BoxView: {
            /** At */
            at: [
                number,
                number,
                number,
                number,
                number,
                number
            ];
            /** Cell */
            cell: [
                number,
                number
            ] | null;
            /** Copy Number */
            copy_number: number;
            /** Height */
            height: number;
            /** Holder */
            holder: string;
            /** Inset */
            inset: [
                number,
                number
            ];
            /** Kind */
            kind: string;
            /** Lie */
            lie: number;
            /** Name */
            name: string;
            /** Turn */
            turn: number;
            /** Width */
            width: number;
        };
        /**
         * CellAt
         * @description The address of a cell: a section, and a row and column of its map as written, from 0.
         */
        CellAt: {
            /** Column */
            column: number;
            /** Row */
            row: number;
            /** Section */
            section: string;
        };
        /**
         * CellView
         * @description The address of what can be painted: a section, and the row and column in its map as written.
         */
        CellView: {
            /** Column */
            column: number;
            /** Row */
            row: number;
            /** Section */
            section: string;
        };
        /**
         * ChangeName
         * @description A value that differs in a size: the key of the change, that of what it changes, and the value in this size.
         */
        ChangeName: {
            /** At */
            at: string;
            /** Key */
            key: string;
            value: components["schemas"]["JsonValue"];
        };
        /**
         * ChangeUnits
         * @description Draft a design anew in inches or in metric: every length that it states at the nearest mark of that ruler.
         */
        ChangeUnits: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "change-units";
            /**
             * Units
             * @enum {string}
             */
            units: "inch" | "metric";
        };
        /**
         * ChapterView
         * @description A part of the work, the figures that belong to all of it, and what to take care of with its tools.
         */
        ChapterView: {
            /** Cautions */
            cautions: string[];
            /** Entries */
            entries: components["schemas"]["EntryView"][];
            /** Figures */
            figures: components["schemas"]["FigureView"][];
            /** Title */
            title: string;
        };
        /**
         * ChoiceView
         * @description A choice of house style: the key that puts it, what it is now, and between what there is to choose, if words.
         */
        ChoiceView: {
            /** Between */
            between: string[];
            /** Key */
            key: string;
            /** Value */
            value: string | boolean;
        };
        /**
         * CloseView
         * @description Two fabrics, or a shape on its own fabric, that meet and are too close.
         */
        CloseView: {
            finding: components["schemas"]["FindingView"];
            /** Letters */
            letters: string[];
        };
        /**
         * ClothFabric
         * @description A fabric: its value of 100, the grey of that value, the ink that is read on it, and the area that shows.
         */
        ClothFabric: {
            /** Colour */
            colour: string;
            /** Grey */
            grey: string;
            /** Ink */
            ink: string;
            /** Letter */
            letter: string;
            /** Name */
            name: string;
            /** Share */
            share: number;
            /** Shown */
            shown: string;
            /** Uses */
            uses: string[];
            /** Value */
            value: number;
        };
        /**
         * ClothRoom
         * @description The room of cloth.
         */
        ClothRoom: {
            /** Close */
            close: components["schemas"]["CloseView"][];
            /** Fabrics */
            fabrics: components["schemas"]["ClothFabric"][];
            /** Revision */
            revision: number;
        };
        /**
         * ClothView
         * @description Cloth other than a unit's, later ones on top.
         */
        ClothView: {
            /** Fabric */
            fabric: string;
            /** Path */
            path: string;
            /** Section */
            section: string;
            /** What */
            what: string;
        };
        /**
         * ColourwayView
         * @description A recipe in cloth; `cloths` are part and letter.
         */
        ColourwayView: {
            /** Cloths */
            cloths: {
                [key: string]: string;
            };
            /** Code */
            code: string;
            /** First */
            first: string;
            /** Ground */
            ground: string;
            /** Kinds */
            kinds: components["schemas"]["KindView"][];
            /** Recipe */
            recipe: string;
            /** Second */
            second: string;
            /** Spoken */
            spoken: string;
        };
        /**
         * CopyOrder
         * @description Where the copy goes, and whether a folder is made for it.
         */
        CopyOrder: {
            /**
             * Make Folder
             * @default false
             */
            make_folder: boolean;
            /** Path */
            path: string;
        };
        /**
         * CopyRecipe
         * @description Add a copy of a recipe under another name, to draft from.
         */
        CopyRecipe: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "copy-recipe";
            /** Recipe */
            recipe: string;
            /** To */
            to: string;
        };
        /**
         * CuttingView
         * @description All plans of one size, and the figures of every size side by side.
         */
        CuttingView: {
            /** Advice */
            advice: string[];
            /** Plans */
            plans: components["schemas"]["PlanView"][];
            /** Revision */
            revision: number;
            /** Settled */
            settled: boolean;
            /** Shopping */
            shopping: components["schemas"]["LineView"][];
            /** Size */
            size: string;
            /** Sizes */
            sizes: components["schemas"]["FiguresView"][];
            web: components["schemas"]["WebView"];
        };
        /**
         * DecideStrips
         * @description Decide on strips of a fabric: their height, how many, and the labels of pieces that they are cut into.
         */
        DecideStrips: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Count */
            count?: number | null;
            /** Fabric */
            fabric: string;
            /** Height */
            height: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "decide-strips";
            /**
             * Pieces
             * @default []
             */
            pieces: string[];
        };
        /**
         * DecisionView
         * @description Strips that the designer has decided on, at a place among those of the fabric. No count: as many as it takes.
         */
        DecisionView: {
            /** Count */
            count: number | null;
            /** Height */
            height: string;
            /** Pieces */
            pieces: string[];
            /** Place */
            place: number;
        };
        /**
         * DraftPiece
         * @description A piece as the cuts leave it. `cut_at` lays its unit's own frame where it lay in the master.
         *
         *     `sewn_at` lays it so that sewn edges meet along the cuts; `apart` is which way it goes when all are pulled apart.
         */
        DraftPiece: {
            /** Apart */
            apart: [
                number,
                number
            ];
            /** Cut At */
            cut_at: [
                number,
                number,
                number,
                number,
                number,
                number
            ];
            /** Name */
            name: string;
            /** Outline */
            outline: string;
            /** Sewn At */
            sewn_at: [
                number,
                number,
                number,
                number,
                number,
                number
            ];
            /** Unit */
            unit: number;
        };
        /**
         * DraftUnit
         * @description A kind of unit in its own frame: as trimmed and as sewn.
         */
        DraftUnit: {
            /** Cut */
            cut: components["schemas"]["PartFace"][];
            /** Cut Outline */
            cut_outline: string;
            /** Each */
            each: number;
            /** Height */
            height: number;
            /** Mirror */
            mirror: string | null;
            /** Outline */
            outline: string;
            /** Quarter */
            quarter: string;
            /** Sewn */
            sewn: components["schemas"]["PartFace"][];
            /** Size */
            size: [
                string,
                string
            ];
            /** Width */
            width: number;
        };
        /**
         * DraftView
         * @description A recipe on the drafting table. `other` is the same with the other curve, where it can be drafted.
         */
        DraftView: {
            /** Colourways */
            colourways: string[];
            /** Curve */
            curve: string;
            /** Cuts */
            cuts: string;
            /** Halves */
            halves: string[];
            /** Key */
            key: string;
            /** Kind */
            kind: string;
            master: components["schemas"]["MasterView"] | null;
            /** Name */
            name: string;
            /** Numbers */
            numbers: components["schemas"]["NumberView"][];
            /** Of */
            of: string;
            other: components["schemas"]["SewnView"] | null;
            /** Parts */
            parts: string[];
            /** Pieced */
            pieced: boolean | null;
            sewn: components["schemas"]["SewnView"];
        };
        /**
         * DrawingView
         * @description A drawing of a figure as SVG, what it shows in words, and the line under it.
         */
        DrawingView: {
            /** Alt */
            alt: string;
            /** Svg */
            svg: string;
            /** Text */
            text: string;
        };
        /**
         * EntryView
         * @description Something to do: its words, its figures, and which pieces go in and come out.
         */
        EntryView: {
            /** Figures */
            figures: components["schemas"]["FigureView"][];
            /** Id */
            id: string;
            /** Lines */
            lines: string[];
            /** Makes */
            makes: components["schemas"]["PileView"][];
            /** Number */
            number: number;
            /** Sentences */
            sentences: string[];
            /** Ticked */
            ticked: boolean;
            /** Title */
            title: string;
            /** Uses */
            uses: components["schemas"]["PileView"][];
        };
        /**
         * ExampleView
         * @description A design to look at: an example, or a known setting.
         */
        ExampleView: {
            /** About */
            about: string;
            /** Name */
            name: string;
            /** Title */
            title: string;
        };
        /**
         * FabricFigures
         * @description What is bought of a fabric, and how near that is to the least.
         */
        FabricFigures: {
            bought: components["schemas"]["LengthView"];
            bound: components["schemas"]["LengthView"];
            cut: components["schemas"]["LengthView"];
            /** Gap Percent */
            gap_percent: number;
            /** Letter */
            letter: string;
            /** Price */
            price: string | null;
            slack: components["schemas"]["LengthView"];
        };
        /**
         * FabricView
         * @description A fabric, its lengths as text of the file's units.
         */
        FabricView: {
            /** Colour */
            colour: string;
            /** Direction */
            direction: string;
            /** Kind */
            kind: string;
            /** Letter */
            letter: string;
            /** Name */
            name: string;
            photo: components["schemas"]["PhotoView"] | null;
            /** Price */
            price: number | null;
            /** Role */
            role: string;
            /** Shrink Across */
            shrink_across: number;
            /** Shrink Along */
            shrink_along: number;
            /** Upright */
            upright: boolean;
            /** Width */
            width: string;
        };
        /**
         * FaceView
         * @description Cloth that shows in a unit: the letter of its fabric, and where, in the unit's own frame.
         */
        FaceView: {
            /** Fabric */
            fabric: string;
            /** Path */
            path: string;
        };
        /**
         * FigureView
         * @description A figure of the booklet.
         */
        FigureView: {
            /** Caption */
            caption: string;
            /** Drawings */
            drawings: components["schemas"]["DrawingView"][];
            /** Number */
            number: number;
        };
        /**
         * FiguresView
         * @description The figures of a size. `settled` is false until they come from the proved plans.
         */
        FiguresView: {
            /** Batting */
            batting: [
                components["schemas"]["LengthView"],
                components["schemas"]["LengthView"]
            ];
            /** Batting Package */
            batting_package: string;
            binding: components["schemas"]["LengthView"];
            /** Cost */
            cost: string | null;
            /** Currency */
            currency: string;
            /** Fabrics */
            fabrics: components["schemas"]["FabricFigures"][];
            flow: components["schemas"]["FlowFigures"] | null;
            height: components["schemas"]["LengthView"];
            /** Hours */
            hours: number | null;
            /** Masters */
            masters: components["schemas"]["MasterFigures"][];
            /** Revision */
            revision: number;
            /** Settled */
            settled: boolean;
            /** Size */
            size: string;
            /** Steps */
            steps: number | null;
            /** Units */
            units: number;
            /** Unpriced */
            unpriced: string[];
            web: components["schemas"]["LengthView"];
            width: components["schemas"]["LengthView"];
        };
        /**
         * FilesView
         * @description What was published last.
         */
        FilesView: {
            /** Files */
            files: components["schemas"]["PublishedFile"][];
        };
        /**
         * FillSection
         * @description Lay a unit, a fabric or a section into every cell of a section.
         */
        FillSection: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "fill";
            /** Section */
            section: string;
            /**
             * Turn
             * @default 0
             */
            turn: number;
            /** Unit */
            unit: string;
        };
        /**
         * FilmView
         * @description All steps, how many could be done, and what the comparison with the picture found: square inches, and a share.
         */
        FilmView: {
            /** Difference */
            difference: number;
            /** Done */
            done: number;
            /** Failures */
            failures: string[];
            /** Holds */
            holds: boolean;
            /** Revision */
            revision: number;
            /** Share */
            share: number;
            /** Steps */
            steps: components["schemas"]["StepName"][];
        };
        /**
         * FindQuestion
         * @description What is looked for: a block of `repeat` × `repeat` units in some colourways, laid with a symmetry.
         */
        FindQuestion: {
            /**
             * Codes
             * @default []
             */
            codes: string[];
            /**
             * Most
             * @default 12
             */
            most: number;
            /**
             * Repeat
             * @default 2
             */
            repeat: number;
            /**
             * Section
             * @default centre
             */
            section: string;
            /**
             * Symmetry
             * @default slide
             * @enum {string}
             */
            symmetry: "slide" | "mirror" | "turn" | "half turn";
        };
        /**
         * FindView
         * @description What was found, of how many that differ; `sampled` says how many were drawn by lot, if not all were looked at.
         */
        FindView: {
            /** Codes */
            codes: string[];
            /** Different */
            different: number;
            /** Found */
            found: components["schemas"]["FoundView"][];
            /** Repeat */
            repeat: number;
            /** Revision */
            revision: number;
            /** Sampled */
            sampled: number | null;
            /** Symmetry */
            symmetry: string;
            /** Units */
            units: {
                [key: string]: components["schemas"]["UnitView"];
            };
            /** Ways */
            ways: number;
        };
        /**
         * FinderView
         * @description What there is to choose from: colourways, how many of them at most, and the sections that can be laid so.
         */
        FinderView: {
            /** Codes */
            codes: components["schemas"]["FitView"][];
            /** Most */
            most: number;
            /** Revision */
            revision: number;
            /** Sections */
            sections: string[];
        };
        /**
         * FindingView
         * @description A fact about the design that the designer should know.
         */
        FindingView: {
            /** Code */
            code: string;
            /** Column */
            column: number | null;
            /** Detail */
            detail: string;
            /** Key */
            key: string;
            /** Line */
            line: number | null;
            /** Remedy */
            remedy: string;
            /** Sentence */
            sentence: string;
            /** Severity */
            severity: string;
        };
        /**
         * FitView
         * @description A colourway: whether it lies in the quilt, and why its units cannot be laid so; empty where they can.
         */
        FitView: {
            /** Code */
            code: string;
            /** Laid */
            laid: boolean;
            /** Side */
            side: string;
            /** Why */
            why: string;
        };
        /**
         * FlowFigures
         * @description Curves followed through the top: rounds that close, circles among them, paths that do not, steps at seams.
         */
        FlowFigures: {
            /** Circles */
            circles: number;
            /** Paths */
            paths: number;
            /** Rounds */
            rounds: number;
            /** Steps */
            steps: number;
        };
        /**
         * FolderView
         * @description What lies in a folder. `above` is empty at the root of the disk; `wanted` is what was asked for and is not there.
         *
         *     Paths of folders end in the sign that parts folders on this machine.
         */
        FolderView: {
            /** Above */
            above: string;
            /** Designs */
            designs: string[];
            /** Folders */
            folders: string[];
            /** Path */
            path: string;
            /** Wanted */
            wanted: string;
        };
        /**
         * FoundFinding
         * @description A finding with its place, and the size that it is told of: empty for the file's own.
         */
        FoundFinding: {
            finding: components["schemas"]["FindingView"];
            spot: components["schemas"]["SpotView"];
        };
        /**
         * FoundView
         * @description A setting: its score of 100 and the four measures from 0 to 1, its picture as words, and how it is taken.
         */
        FoundView: {
            /** Balance */
            balance: number;
            /** Cloth */
            cloth: number;
            /** Flow */
            flow: number;
            /** Number */
            number: number;
            /** Rounds */
            rounds: number;
            /** Rows */
            rows: string[][];
            /** Score */
            score: number;
            take: components["schemas"]["TakeView"] | null;
        };
        /**
         * FrameView
         * @description A step of the film: what it takes up and lays down, and what lies on the table when it is done.
         *
         *     `failed` says why it could not be done; nothing where it was.
         */
        FrameView: {
            /** Cloth Left */
            cloth_left: {
                [key: string]: string;
            };
            /** Failed */
            failed: string;
            /** Makes */
            makes: components["schemas"]["GoodView"][];
            /** Revision */
            revision: number;
            /** Said */
            said: string[];
            step: components["schemas"]["StepName"];
            /** Table */
            table: components["schemas"]["GoodView"][];
            /** Uses */
            uses: components["schemas"]["GoodView"][];
            /** Web Left */
            web_left: string;
        };
        /**
         * FreeStrips
         * @description Leave strips that were decided on to the plan: those of a place, from 0, or all of a fabric.
         */
        FreeStrips: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Fabric */
            fabric: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "free-strips";
            /** Place */
            place?: number | null;
        };
        /**
         * GoodView
         * @description Equal things: how many, how large one is and what it looks like, in its own frame; `box` is its upright box.
         */
        GoodView: {
            /** Box */
            box: [
                number,
                number,
                number,
                number
            ];
            /** Count */
            count: number;
            /** Edge */
            edge: string;
            /** Label */
            label: string;
            /** Layers */
            layers: components["schemas"]["LayerView"][];
            /** Size */
            size: string;
        };
        /**
         * JoinView
         * @description Where an edge of cloth comes to a seam, and what it finds there: match, step or end. In the top's frame.
         */
        JoinView: {
            /** At */
            at: [
                number,
                number,
                number,
                number
            ];
            /** Distance */
            distance: number;
            /** First */
            first: number;
            /** Meeting */
            meeting: string;
            /** Second */
            second: number;
        };
        JsonValue: unknown;
        /**
         * KeepOrder
         * @description Which of two texts goes on: ours, or that which someone else wrote into the file.
         */
        KeepOrder: {
            /**
             * Keep
             * @enum {string}
             */
            keep: "ours" | "theirs";
            /** Revision */
            revision: number;
        };
        /**
         * KindView
         * @description A unit by the name that maps write, and whether maps can hold it and be mirrored.
         */
        KindView: {
            /** Fits Map */
            fits_map: boolean;
            /** Mirror */
            mirror: string | null;
            /** Mirror Turn */
            mirror_turn: number;
            /** Name */
            name: string;
            /** Spoken */
            spoken: string;
        };
        /**
         * LayBeside
         * @description Lay a section above, below, left or right of the whole quilt, inside its borders.
         */
        LayBeside: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "lay-beside";
            /** Section */
            section: string;
            /**
             * Side
             * @enum {string}
             */
            side: "above" | "right" | "below" | "left";
        };
        /**
         * LayCells
         * @description Lay a unit, a fabric or a section into some cells, all with one turn, or each with its own.
         *
         *     Where a brush with symmetry lays mirror images, `units` names the unit of each cell.
         */
        LayCells: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Cells */
            cells: components["schemas"]["CellAt"][];
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "lay";
            /**
             * Turn
             * @default 0
             */
            turn: number;
            /**
             * Turns
             * @default []
             */
            turns: number[];
            /** Unit */
            unit: string;
            /**
             * Units
             * @default []
             */
            units: string[];
        };
        /**
         * LayOtherwise
         * @description Set a section another way: straight or on point, side by side or one below another.
         */
        LayOtherwise: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Fabric */
            fabric?: string | null;
            /**
             * Kind
             * @enum {string}
             */
            kind: "straight" | "on point" | "columns" | "rows";
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "lay-otherwise";
            /** Section */
            section: string;
        };
        /**
         * LayerView
         * @description A layer of cloth as seen from its right side; no letter where it is web.
         */
        LayerView: {
            /** Fabric */
            fabric: string;
            /** Path */
            path: string;
        };
        /**
         * LayersView
         * @description So many layers of cloth in the allowance along a stretch of a unit's side, in the unit's own frame.
         */
        LayersView: {
            /** End */
            end: number;
            /** Layers */
            layers: number;
            /** Side */
            side: string;
            /** Start */
            start: number;
        };
        /**
         * LengthView
         * @description A length, for reckoning on the screen and as it is printed.
         */
        LengthView: {
            /** Inches */
            inches: number;
            /** Text */
            text: string;
        };
        /**
         * LineView
         * @description Something that is bought, as the shopping list has it.
         */
        LineView: {
            /** Amount */
            amount: string;
            /** Key */
            key: string;
            /** Matches */
            matches: string;
            /** Price */
            price: string | null;
            /** Width */
            width: string;
        };
        /**
         * LookOrder
         * @description An act whose outcome is to be looked at before it is done.
         */
        LookOrder: {
            /** Act */
            act: components["schemas"]["TurnCells"] | components["schemas"]["LayCells"] | components["schemas"]["FillSection"] | components["schemas"]["StampWords"] | components["schemas"]["SwapColourways"] | components["schemas"]["AddSection"] | components["schemas"]["RemoveSection"] | components["schemas"]["RenameSection"] | components["schemas"]["ResizeMap"] | components["schemas"]["WriteOut"] | components["schemas"]["LayOtherwise"] | components["schemas"]["LayBeside"] | components["schemas"]["AddPart"] | components["schemas"]["RemovePart"] | components["schemas"]["MovePart"] | components["schemas"]["AddBorder"] | components["schemas"]["RemoveBorder"] | components["schemas"]["MoveBorder"] | components["schemas"]["PlaceMotif"] | components["schemas"]["MoveMotif"] | components["schemas"]["OrderMotif"] | components["schemas"]["RemoveMotif"] | components["schemas"]["AddRecipe"] | components["schemas"]["CopyRecipe"] | components["schemas"]["RenameRecipe"] | components["schemas"]["RemoveRecipe"] | components["schemas"]["AddShape"] | components["schemas"]["RemoveShape"] | components["schemas"]["OrderShape"] | components["schemas"]["TakeOutline"] | components["schemas"]["AddFabric"] | components["schemas"]["RemoveFabric"] | components["schemas"]["RenameFabric"] | components["schemas"]["SwapFabrics"] | components["schemas"]["TakeColours"] | components["schemas"]["SetPhoto"] | components["schemas"]["AddColourway"] | components["schemas"]["RemoveColourway"] | components["schemas"]["DecideStrips"] | components["schemas"]["FreeStrips"] | components["schemas"]["TakeSetting"] | components["schemas"]["AddSize"] | components["schemas"]["RemoveSize"] | components["schemas"]["RenameSize"] | components["schemas"]["ChangeUnits"] | components["schemas"]["Put"] | components["schemas"]["Puts"] | components["schemas"]["Write"];
        };
        /**
         * MakingView
         * @description The work in order, how much of it is ticked, and the piles that lie ready when all that is ticked is done.
         */
        MakingView: {
            /** Cautions */
            cautions: string[];
            /** Chapters */
            chapters: components["schemas"]["ChapterView"][];
            /** Done */
            done: number;
            /** Entries */
            entries: number;
            /** Ready */
            ready: components["schemas"]["PileView"][];
            /** Revision */
            revision: number;
            /** Size */
            size: string;
        };
        /**
         * MarksView
         * @description Where a piece is seen: its fabric in the units of some colourways, other cloth, the binding, or the back.
         *
         *     `cloths` are places in `QuiltView.cloths`.
         */
        MarksView: {
            /** Backing */
            backing: boolean;
            /** Binding */
            binding: boolean;
            /** Cloths */
            cloths: number[];
            /** Colourways */
            colourways: string[];
        };
        /**
         * MasterFigures
         * @description Masters of a colourway to make, and what they leave over.
         */
        MasterFigures: {
            /** Code */
            code: string;
            /** Masters */
            masters: number;
            /** Needed */
            needed: number;
            /** Recipe */
            recipe: string;
            /** Spare */
            spare: number;
            /** Surplus */
            surplus: number;
        };
        /**
         * MasterView
         * @description A master as cut, about its middle.
         */
        MasterView: {
            /** Cuts */
            cuts: [
                number,
                number,
                number,
                number
            ][];
            /** Height */
            height: number;
            /** Shapes */
            shapes: components["schemas"]["ShapeView"][];
            /** Size */
            size: [
                string,
                string
            ];
            /** Trim */
            trim: [
                number,
                number
            ];
            /** Trimmed */
            trimmed: string;
            /** Width */
            width: number;
        };
        /**
         * MeetingView
         * @description Where a curve is rejoined over a seam: the corner that it makes there, in degrees, and how far it misses.
         */
        MeetingView: {
            /** At */
            at: [
                number,
                number
            ];
            /** Peak */
            peak: number;
            /** Step */
            step: number;
        };
        /**
         * MotifName
         * @description A motif of a panel: `x` and `y` are those of its middle in inches, `at` as the file has them.
         */
        MotifName: {
            /** At */
            at: [
                string,
                string
            ];
            /** Fabric */
            fabric: string;
            /** Recipe */
            recipe: string;
            /** Turn */
            turn: number;
            /** X */
            x: number;
            /** Y */
            y: number;
        };
        /**
         * MoveBorder
         * @description Move a border inwards or outwards, to another place among the borders of its section.
         */
        MoveBorder: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "move-border";
            /** Place */
            place: number;
            /**
             * Section
             * @default centre
             */
            section: string;
            /** To */
            to: number;
        };
        /**
         * MoveMotif
         * @description Move a motif, or turn it, or give it another fabric.
         */
        MoveMotif: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** At */
            at?: [
                string,
                string
            ] | null;
            /** Fabric */
            fabric?: string | null;
            /** Motif */
            motif: number;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "move-motif";
            /** Section */
            section: string;
            /** Turn */
            turn?: number | null;
        };
        /**
         * MovePart
         * @description Move a part of a line to another place in it.
         */
        MovePart: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "move-part";
            /** Place */
            place: number;
            /** Section */
            section: string;
            /** To */
            to: number;
        };
        /**
         * NewDesign
         * @description What a new design begins from: a size (a bed, or width and height), a block, colours, a known setting.
         *
         *     `block` is the finished side of a unit.
         */
        NewDesign: {
            /** Bed */
            bed?: string | null;
            /** Block */
            block?: string | null;
            /** Colours */
            colours?: string | null;
            /** Setting */
            setting?: string | null;
            /** Size */
            size?: [
                string,
                string
            ] | null;
            /**
             * Title
             * @default Untitled
             */
            title: string;
            /**
             * Units
             * @default inch
             * @enum {string}
             */
            units: "inch" | "metric";
        };
        /**
         * NumberView
         * @description A number of a recipe that can be set: its dotted key, its value as written, and whether the file states it.
         */
        NumberView: {
            /** Key */
            key: string;
            /** Stated */
            stated: boolean;
            /** Value */
            value: string;
        };
        /**
         * OpenOrder
         * @description Which design to open: a file, one that was open before, an example, a new one, or a text. One of these.
         */
        OpenOrder: {
            /** Example */
            example?: string | null;
            new?: components["schemas"]["NewDesign"] | null;
            /** Open */
            open?: string | null;
            /** Recent */
            recent?: string | null;
            /** Text */
            text?: string | null;
        };
        /**
         * Opened
         * @description A design that is open, by its id.
         */
        Opened: {
            /** Id */
            id: string;
        };
        /**
         * OrderMotif
         * @description Lay a motif above or below others: at another place in the order of fusing.
         */
        OrderMotif: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Motif */
            motif: number;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "order-motif";
            /** Section */
            section: string;
            /** To */
            to: number;
        };
        /**
         * OrderShape
         * @description Fuse a shape above or below others: at another place in the order of fusing.
         */
        OrderShape: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "order-shape";
            /** Recipe */
            recipe: string;
            /** Shape */
            shape: number;
            /** To */
            to: number;
        };
        /**
         * Outcome
         * @description What a change came to. `facts` tell what it did; the page has the words.
         */
        Outcome: {
            /** Act */
            act: string;
            /** Changed */
            changed: boolean;
            /** Facts */
            facts: {
                [key: string]: string | number;
            };
            /** Revision */
            revision: number;
        };
        /**
         * OutlineView
         * @description A closed shape: the name suggested for it, its true size, and its path data in inches for `take-outline`.
         */
        OutlineView: {
            /** Element */
            element: string;
            /** Height */
            height: string;
            /** Line */
            line: number;
            /** Name */
            name: string;
            /** Path */
            path: string;
            /** Width */
            width: string;
        };
        /**
         * OutlinesView
         * @description What a drawing holds. `states_size` is false where its units are taken for 1/96 inch.
         */
        OutlinesView: {
            /** Outlines */
            outlines: components["schemas"]["OutlineView"][];
            /** Refused */
            refused: components["schemas"]["RefusedView"][];
            /** States Size */
            states_size: boolean;
        };
        /**
         * PageView
         * @description A page by its number from 1.
         */
        PageView: {
            /** Number */
            number: number;
        };
        /**
         * PaletteColour
         * @description A colour of a photo, what it is called, and its share of the photo.
         */
        PaletteColour: {
            /** Colour */
            colour: string;
            /**
             * Depth
             * @enum {string}
             */
            depth: "dark" | "middle" | "pale";
            /**
             * Hue
             * @enum {string}
             */
            hue: "white" | "cream" | "grey" | "black" | "red" | "orange" | "brown" | "yellow" | "green" | "teal" | "blue" | "violet" | "pink";
            /** Share */
            share: number;
            /** Value */
            value: number;
        };
        /**
         * PaletteName
         * @description Colours to begin with.
         */
        PaletteName: {
            /** Colours */
            colours: string[];
            /** Name */
            name: string;
        };
        /**
         * PaletteView
         * @description Colours of a photo, the most of it first, and what is suggested for the fabrics, dark for dark.
         *
         *     `average` is the colour that the photo has from afar.
         */
        PaletteView: {
            /** Average */
            average: string;
            /** Colours */
            colours: components["schemas"]["PaletteColour"][];
            /** Suggested */
            suggested: {
                [key: string]: string;
            };
        };
        /**
         * PaperView
         * @description A design as it is: its text and what that names, and what the desk knows of its file.
         *
         *     `outside` where the file holds another text; `elsewhere` where another studio has it open too. `found` is how many
         *     findings the checks make, those that stop it included; null until they have been made.
         */
        PaperView: {
            /** Backing */
            backing: string;
            /** Binding */
            binding: string;
            /** Can Redo */
            can_redo: boolean;
            /** Can Undo */
            can_undo: boolean;
            /** Colourways */
            colourways: components["schemas"]["ColourwayView"][];
            /** Currency */
            currency: string;
            /** Elsewhere */
            elsewhere: boolean;
            /** Fabrics */
            fabrics: components["schemas"]["FabricView"][];
            /** Findings Stop */
            findings_stop: components["schemas"]["FindingView"][];
            /** Found */
            found: number | null;
            /** Id */
            id: string;
            /** Missing */
            missing: boolean;
            /** Name */
            name: string;
            /** Outlines */
            outlines: string[];
            /** Outside */
            outside: boolean;
            /** Path */
            path: string;
            /** Recipes */
            recipes: components["schemas"]["RecipeName"][];
            /** Redo Of */
            redo_of: string;
            /** Revision */
            revision: number;
            /** Saved */
            saved: boolean;
            /** Sections */
            sections: components["schemas"]["SectionView"][];
            /** Sizes */
            sizes: components["schemas"]["SizeName"][];
            /** Text */
            text: string;
            /** Title */
            title: string;
            /** Undo Of */
            undo_of: string;
            /** Units */
            units: string;
        };
        /**
         * ParcelView
         * @description A piece of cloth: how large it is as it lies to be cut, where what it is squared up to begins, and its size.
         */
        ParcelView: {
            /** Height */
            height: number;
            /** Said */
            said: string;
            /** Upright */
            upright: boolean;
            /** Whole Height */
            whole_height: number;
            /** Whole Width */
            whole_width: number;
            /** Width */
            width: number;
            /** Y */
            y: number;
        };
        /**
         * PartFace
         * @description What shows of a part of the recipe: the ground, or a shape's part; in a rejoined unit `first/ground`.
         */
        PartFace: {
            /** Part */
            part: string;
            /** Path */
            path: string;
        };
        /**
         * PhotoView
         * @description A photo beside the design: `width` is what it shows across; `crop` is left, top, width, height as shares.
         */
        PhotoView: {
            /** Crop */
            crop: [
                number,
                number,
                number,
                number
            ];
            /** File */
            file: string;
            /** Inches */
            inches: number | null;
            /** Width */
            width: string | null;
        };
        /**
         * PieceView
         * @description A piece of the bill: what it is for, its size as cut, how many are cut, and where it is seen in the quilt.
         */
        PieceView: {
            /** Count */
            count: number;
            /** Label */
            label: string;
            marks: components["schemas"]["MarksView"];
            /** Name */
            name: string;
            /** Purpose */
            purpose: string;
            /** Size */
            size: string;
            /** Spare */
            spare: number;
            /** Used For */
            used_for: string;
        };
        /**
         * PileView
         * @description So many pieces of a label.
         */
        PileView: {
            /** Count */
            count: number;
            /** Label */
            label: string;
        };
        /**
         * PlaceMotif
         * @description Place the shape of a recipe on a panel, on top of what is there.
         */
        PlaceMotif: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** At */
            at: [
                string,
                string
            ];
            /** Fabric */
            fabric: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "place-motif";
            /** Recipe */
            recipe: string;
            /** Section */
            section: string;
            /**
             * Turn
             * @default 0
             */
            turn: number;
        };
        /**
         * PlacedView
         * @description A unit at its place. `cell` is the row and column of the map of `written` that fills it.
         *
         *     `lie` says how a turn in the map is seen there: turned by so many quarters further where it is 0 to 3, and of what
         *     is mirrored (4 to 7) by lie − 4 less the turn in the map.
         */
        PlacedView: {
            /** At */
            at: [
                number,
                number,
                number,
                number,
                number,
                number
            ];
            /** Cell */
            cell: [
                number,
                number
            ] | null;
            /** Column */
            column: number;
            /** Copy Number */
            copy_number: number;
            /** Lie */
            lie: number;
            /** Row */
            row: number;
            /** Section */
            section: string;
            /** Turn */
            turn: number;
            /** Unit */
            unit: string;
            /** Written */
            written: string;
        };
        /**
         * PlanView
         * @description The cutting plan of a fabric. What comes first is cut first.
         */
        PlanView: {
            bought: components["schemas"]["LengthView"];
            bound: components["schemas"]["LengthView"];
            /** Colour */
            colour: string;
            cut: components["schemas"]["LengthView"];
            /** Decisions */
            decisions: components["schemas"]["DecisionView"][];
            /** Gap Percent */
            gap_percent: number;
            hand_rule: components["schemas"]["LengthView"];
            /** Heights */
            heights: string[];
            /** Kinds */
            kinds: components["schemas"]["StripKindView"][];
            /** Letter */
            letter: string;
            /** Name */
            name: string;
            other_way: components["schemas"]["LengthView"] | null;
            /** Parcels */
            parcels: components["schemas"]["ParcelView"][];
            /** Pieces */
            pieces: components["schemas"]["PieceView"][];
            /** Price */
            price: string | null;
            /** Runs */
            runs: components["schemas"]["RunView"][];
            /** Said */
            said: string;
            slack: components["schemas"]["LengthView"];
            squaring: components["schemas"]["LengthView"];
            /** Strips */
            strips: components["schemas"]["StripView"][];
            undecided: components["schemas"]["LengthView"] | null;
            /** Unplaced */
            unplaced: string[];
            width: components["schemas"]["LengthView"];
        };
        /**
         * PressView
         * @description A seam of the top, and where its allowances go: a way of length 1, or none where they are opened.
         */
        PressView: {
            /** At */
            at: [
                number,
                number,
                number,
                number
            ];
            /** Towards */
            towards: [
                number,
                number
            ] | null;
        };
        /**
         * ProofView
         * @description All findings, worst first as they are; `proved` says what the rehearsal said, empty until it has been run.
         */
        ProofView: {
            /** Checks */
            checks: number;
            /** Counts */
            counts: {
                [key: string]: number;
            };
            /** Findings */
            findings: components["schemas"]["FoundFinding"][];
            /** Holds */
            holds: boolean | null;
            /** Proved */
            proved: string[];
            /** Revision */
            revision: number;
        };
        /**
         * PublishOrder
         * @description What to publish: one size or all, on which paper, which parts (none named: all), and whether as a draft.
         */
        PublishOrder: {
            /**
             * Draft
             * @default false
             */
            draft: boolean;
            /**
             * Only
             * @default []
             */
            only: ("booklet" | "templates" | "picture" | "lists" | "selling" | "findings")[];
            /** Paper */
            paper?: ("letter" | "a4") | null;
            /** Size */
            size?: string | null;
        };
        /**
         * PublishView
         * @description How far a publish has come.
         */
        PublishView: {
            /** Findings */
            findings: components["schemas"]["FindingView"][];
            /** Folder */
            folder: string;
            /** Part */
            part: string;
            /** Reason */
            reason: string;
            /** Remedy */
            remedy: string;
            /** Revision */
            revision: number;
            /**
             * State
             * @enum {string}
             */
            state: "none" | "running" | "done" | "stopped" | "failed" | "cancelled";
        };
        /**
         * PublishedFile
         * @description A published file.
         */
        PublishedFile: {
            /** Bytes */
            bytes: number;
            /** Name */
            name: string;
        };
        /**
         * Put
         * @description Put a value at a dotted key; no value takes the key away.
         */
        Put: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** At */
            at: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "put";
            value?: components["schemas"]["JsonValue"];
        };
        /**
         * Puts
         * @description Put several values at once.
         */
        Puts: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "puts";
            /** Values */
            values: {
                [key: string]: components["schemas"]["JsonValue"];
            };
        };
        /**
         * QuiltView
         * @description All that is drawn of the quilt.
         */
        QuiltView: {
            binding: components["schemas"]["BindingView"];
            /** Boxes */
            boxes: components["schemas"]["BoxView"][];
            /** Cloths */
            cloths: components["schemas"]["ClothView"][];
            /** Fits */
            fits: boolean;
            /** Height */
            height: number;
            /** Placed */
            placed: components["schemas"]["PlacedView"][];
            /** Revision */
            revision: number;
            /** Seam */
            seam: number;
            /** Units */
            units: {
                [key: string]: components["schemas"]["UnitView"];
            };
            /** Width */
            width: number;
        };
        /**
         * RecentView
         * @description A design that was open before.
         */
        RecentView: {
            /** Changed */
            changed: string;
            /** Id */
            id: string | null;
            /** Missing */
            missing: boolean;
            /** Path */
            path: string;
            /** Title */
            title: string;
        };
        /**
         * RecipeName
         * @description A recipe by name and kind, and the parts that its colourways give cloth.
         */
        RecipeName: {
            /** Fits Motif */
            fits_motif: boolean;
            /** Kind */
            kind: string;
            /** Name */
            name: string;
            /** Parts */
            parts: string[];
        };
        /**
         * RectView
         * @description A piece, or an offcut where it has no label, on its cloth: inches from the top left, x across the cloth.
         */
        RectView: {
            /** Height */
            height: number;
            /** Label */
            label: string;
            /** Width */
            width: number;
            /** X */
            x: number;
            /** Y */
            y: number;
        };
        /**
         * Refused
         * @description Why a request is refused, and what to do instead.
         */
        Refused: {
            /**
             * Can Anyway
             * @default false
             */
            can_anyway: boolean;
            /** Column */
            column?: number | null;
            /** Detail */
            detail: string;
            /**
             * Findings
             * @default []
             */
            findings: components["schemas"]["FindingView"][];
            /** Line */
            line?: number | null;
            /** Remedy */
            remedy: string;
            /** Revision */
            revision?: number | null;
        };
        /**
         * RefusedView
         * @description A shape that cannot be cut out of cloth.
         */
        RefusedView: {
            /** Element */
            element: string;
            /** Line */
            line: number;
            /** Reason */
            reason: string;
        };
        /**
         * RehearsingView
         * @description How far a rehearsal has come: `done` of `steps`.
         */
        RehearsingView: {
            /** Done */
            done: number;
            /** Reason */
            reason: string;
            /** Revision */
            revision: number;
            /** Size */
            size: string;
            /**
             * State
             * @enum {string}
             */
            state: "none" | "running" | "comparing" | "done" | "failed" | "cancelled";
            /** Steps */
            steps: number;
        };
        /**
         * RemoveBorder
         * @description Take a border away, counted from the inside from 0.
         */
        RemoveBorder: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-border";
            /** Place */
            place: number;
            /**
             * Section
             * @default centre
             */
            section: string;
        };
        /**
         * RemoveColourway
         * @description Take a colourway away; where it lies, something else is laid instead.
         */
        RemoveColourway: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Code */
            code: string;
            /** Instead */
            instead?: string | null;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-colourway";
        };
        /**
         * RemoveFabric
         * @description Take a fabric away; wherever it is used, another takes its place.
         */
        RemoveFabric: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Instead */
            instead?: string | null;
            /** Letter */
            letter: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-fabric";
        };
        /**
         * RemoveMotif
         * @description Take a motif off a panel.
         */
        RemoveMotif: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Motif */
            motif: number;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-motif";
            /** Section */
            section: string;
        };
        /**
         * RemovePart
         * @description Take a part out of a line.
         */
        RemovePart: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-part";
            /** Place */
            place: number;
            /** Section */
            section: string;
        };
        /**
         * RemoveRecipe
         * @description Take a recipe away that no colourway, motif or rejoining uses.
         */
        RemoveRecipe: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-recipe";
            /** Recipe */
            recipe: string;
        };
        /**
         * RemoveSection
         * @description Take a section away, its borders with it; where it lies, something else is laid instead.
         */
        RemoveSection: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Instead */
            instead?: string | null;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-section";
            /** Section */
            section: string;
        };
        /**
         * RemoveShape
         * @description Take a shape off a master of shapes cut; with the last of its part, the part out of its colourways.
         */
        RemoveShape: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-shape";
            /** Recipe */
            recipe: string;
            /** Shape */
            shape: number;
        };
        /**
         * RemoveSize
         * @description Take a size away.
         */
        RemoveSize: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "remove-size";
            /** Size */
            size: string;
        };
        /**
         * RenameFabric
         * @description Give a fabric another letter, wherever it is named.
         */
        RenameFabric: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Letter */
            letter: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "rename-fabric";
            /** To */
            to: string;
        };
        /**
         * RenameRecipe
         * @description Give a recipe another name, wherever it is named.
         */
        RenameRecipe: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "rename-recipe";
            /** Recipe */
            recipe: string;
            /** To */
            to: string;
        };
        /**
         * RenameSection
         * @description Give a section another name, wherever it is called.
         */
        RenameSection: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "rename-section";
            /** Section */
            section: string;
            /** To */
            to: string;
        };
        /**
         * RenameSize
         * @description Give a size another name, the file's own or another, wherever it is called.
         */
        RenameSize: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "rename-size";
            /** Size */
            size: string;
            /** To */
            to: string;
        };
        /**
         * ResizeMap
         * @description Add rows and columns at the edges of a map, or take them away (below 0).
         *
         *     New places go on as the map repeats, or are filled with a word.
         */
        ResizeMap: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * Bottom
             * @default 0
             */
            bottom: number;
            /** Fill */
            fill?: string | null;
            /**
             * Left
             * @default 0
             */
            left: number;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "resize-map";
            /**
             * Right
             * @default 0
             */
            right: number;
            /** Section */
            section: string;
            /**
             * Top
             * @default 0
             */
            top: number;
        };
        /**
         * RevisionOrder
         * @description The revision that something is to be done to.
         */
        RevisionOrder: {
            /** Revision */
            revision: number;
        };
        /**
         * RunCutView
         * @description Equal pieces that are cut from a run of strips.
         */
        RunCutView: {
            /** Count */
            count: number;
            /** Label */
            label: string;
            length: components["schemas"]["LengthView"];
        };
        /**
         * RunView
         * @description Strips joined end to end, and what is cut from the run.
         */
        RunView: {
            height: components["schemas"]["LengthView"];
            /** Label */
            label: string;
            length: components["schemas"]["LengthView"];
            /** Method */
            method: string;
            /** Pieces */
            pieces: components["schemas"]["RunCutView"][];
            /** Strip */
            strip: string;
            /** Strips */
            strips: number;
        };
        /**
         * SashingName
         * @description The strips between the places of a map; `cornerstone` is empty where the file names no cloth for it.
         */
        SashingName: {
            /** Cornerstone */
            cornerstone: string;
            /** Fabric */
            fabric: string;
            /** Outer */
            outer: boolean;
            /** Width */
            width: string;
        };
        /**
         * SaveOrder
         * @description Where to save: where it was opened from, or somewhere else; whether over what is there, or in a new folder.
         */
        SaveOrder: {
            /**
             * Make Folder
             * @default false
             */
            make_folder: boolean;
            /** Path */
            path?: string | null;
            /**
             * Replace
             * @default false
             */
            replace: boolean;
        };
        /**
         * SeamsView
         * @description All overlays of a size.
         */
        SeamsView: {
            /** Curves */
            curves: {
                [key: string]: string[];
            };
            /** Joins */
            joins: components["schemas"]["JoinView"][];
            /** Layers */
            layers: {
                [key: string]: components["schemas"]["LayersView"][];
            };
            /** Pressing */
            pressing: components["schemas"]["PressView"][];
            /** Revision */
            revision: number;
            /** Trails */
            trails: components["schemas"]["TrailView"][];
        };
        /**
         * SectionView
         * @description A section as its map is written; its words can be painted where it is `editable`.
         */
        SectionView: {
            /** Across */
            across: number;
            /** Borders */
            borders: components["schemas"]["BorderName"][];
            /** Columns */
            columns: number;
            /** Down */
            down: number;
            /** Editable */
            editable: boolean;
            /** Fabric */
            fabric: string;
            /** Key */
            key: string;
            /** Kind */
            kind: string;
            /** Motifs */
            motifs: components["schemas"]["MotifName"][];
            /** Name */
            name: string;
            /** Panel */
            panel: [
                string,
                string
            ] | null;
            /** Rows */
            rows: number;
            sashing: components["schemas"]["SashingName"] | null;
            /** Strips */
            strips: components["schemas"]["StripName"][];
            /** Symmetry */
            symmetry: string;
            triangles: components["schemas"]["TrianglesName"] | null;
            /** Words */
            words: string[][];
        };
        /**
         * SetPhoto
         * @description Give a fabric a photo: a file beside the design, its width in truth, what is cut out of it, and its colour.
         */
        SetPhoto: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Colour */
            colour?: string | null;
            /** Crop */
            crop?: [
                number,
                number,
                number,
                number
            ] | null;
            /** Letter */
            letter: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "set-photo";
            /** Photo */
            photo?: string | null;
            /** Width */
            width?: string | null;
        };
        /**
         * SewnView
         * @description What the seams leave, and its facts: the corner that curves make at a seam, in degrees, and how far they miss.
         */
        SewnView: {
            /** Clearance */
            clearance: string;
            /** Curve */
            curve: string;
            /** Meetings */
            meetings: components["schemas"]["MeetingView"][];
            /** Peak */
            peak: number;
            /** Pieces */
            pieces: components["schemas"]["DraftPiece"][];
            /** Shown */
            shown: number;
            /** Step */
            step: number;
            /** Step Said */
            step_said: string;
            /** Units */
            units: components["schemas"]["DraftUnit"][];
        };
        /**
         * ShapeView
         * @description A fused shape in the master's frame, whose origin is its middle. `key` is that of its table.
         */
        ShapeView: {
            /** At */
            at: [
                string,
                string
            ];
            /** Degrees */
            degrees: number;
            /** Hole */
            hole: string;
            /** Inner */
            inner: string;
            /** Key */
            key: string;
            /** Lobes */
            lobes: number | null;
            /** Middle */
            middle: [
                number,
                number
            ];
            /** Name */
            name: string;
            /** Outline */
            outline: string;
            /** Own */
            own: boolean;
            /** Part */
            part: string;
            /** Ring In */
            ring_in: string;
            /** Ring Out */
            ring_out: string;
            /** Traced */
            traced: string;
            /** Underlap */
            underlap: string;
            /** Wanted */
            wanted: string;
            /** Width */
            width: string;
        };
        /**
         * SizeName
         * @description A size by name, and whether it is the file's own.
         */
        SizeName: {
            /** Bed */
            bed: string;
            /** Changes */
            changes: components["schemas"]["ChangeName"][];
            /** Name */
            name: string;
            /** Own */
            own: boolean;
            /** Stated */
            stated: {
                [key: string]: components["schemas"]["JsonValue"];
            };
        };
        /**
         * SizesView
         * @description All known beds, by a drop and a tuck.
         */
        SizesView: {
            /** Drop */
            drop: string;
            /** Revision */
            revision: number;
            /** Suggestions */
            suggestions: components["schemas"]["SuggestionView"][];
        };
        /**
         * SpotView
         * @description Where a finding lies: cells of a map, a section, a border, a fabric, a colourway, a recipe; or nowhere.
         *
         *     `room` is the room of the page in which it is mended.
         */
        SpotView: {
            /** Cells */
            cells: components["schemas"]["CellView"][];
            /** Kind */
            kind: string;
            /** Name */
            name: string;
            /** Room */
            room: string;
        };
        /**
         * StampWords
         * @description Lay a block of words with its top left one in a cell; an empty word leaves what is there.
         *
         *     What reaches past the edge of the map is left out.
         */
        StampWords: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Column */
            column: number;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "stamp";
            /** Row */
            row: number;
            /** Section */
            section: string;
            /** Words */
            words: string[][];
        };
        /**
         * StartView
         * @description All that a person can begin from.
         */
        StartView: {
            /** Beds */
            beds: components["schemas"]["BedView"][];
            /** Blocks */
            blocks: {
                [key: string]: string[];
            };
            /** Examples */
            examples: components["schemas"]["ExampleView"][];
            /** Palettes */
            palettes: components["schemas"]["PaletteName"][];
            /** Recent */
            recent: components["schemas"]["RecentView"][];
            /** Settings */
            settings: components["schemas"]["ExampleView"][];
            /** Units */
            units: string[];
        };
        /**
         * StepName
         * @description A step in the list of the film.
         */
        StepName: {
            /** Chapter */
            chapter: string;
            /** Line */
            line: string;
            /** Number */
            number: number;
            /** Title */
            title: string;
        };
        /**
         * StripKindView
         * @description Equal strips of a plan off the bolt. `written` is their height for the act that decides on them.
         */
        StripKindView: {
            /** Count */
            count: number;
            /** Decided */
            decided: boolean;
            /** Height */
            height: string;
            /** Label */
            label: string;
            /** Pieces */
            pieces: string[];
            /** Written */
            written: string;
        };
        /**
         * StripName
         * @description A plain strip of a line of sections, at its place among the parts.
         */
        StripName: {
            /** Fabric */
            fabric: string;
            /** Place */
            place: number;
            /** Width */
            width: string;
        };
        /**
         * StripView
         * @description A strip across the cloth: its label and number in its group, where it lies, and what is cut from it.
         */
        StripView: {
            /** Height */
            height: number;
            /** Label */
            label: string;
            /** Number */
            number: number;
            /** Parcel */
            parcel: number | null;
            /** Pieces */
            pieces: components["schemas"]["RectView"][];
            /** Said */
            said: string;
            /** Whole */
            whole: boolean;
            /** Width */
            width: number;
            /** Y */
            y: number;
        };
        /**
         * SuggestionView
         * @description A bed: what it wants, what comes nearest from above, and the changes of the act `add-size`; or why none does.
         */
        SuggestionView: {
            /** Bed */
            bed: string;
            /** But */
            but: string;
            /** Changes */
            changes: {
                [key: string]: components["schemas"]["JsonValue"];
            };
            /** Finished */
            finished: [
                string,
                string
            ] | null;
            /** Over */
            over: [
                string,
                string
            ] | null;
            /** Wanted */
            wanted: [
                string,
                string
            ];
        };
        /**
         * SwapColourways
         * @description Exchange two colourways in the maps: in some cells, in one section, or in all.
         */
        SwapColourways: {
            /** A */
            a: string;
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** B */
            b: string;
            /** Cells */
            cells?: components["schemas"]["CellAt"][] | null;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "swap-colourways";
            /** Section */
            section?: string | null;
        };
        /**
         * SwapFabrics
         * @description Exchange two fabrics wherever they are used.
         */
        SwapFabrics: {
            /** A */
            a: string;
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** B */
            b: string;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "swap-fabrics";
        };
        /**
         * TableView
         * @description A table of the file, and whether the file has it; `needed` are keys that it must state.
         */
        TableView: {
            /** Key */
            key: string;
            /** Needed */
            needed: string[];
            /** Stands */
            stands: boolean;
            /** Values */
            values: components["schemas"]["ValueView"][];
        };
        /**
         * TakeColours
         * @description Give fabrics the colours of a palette, those of a photo or of one's own choice, and names if they are told.
         */
        TakeColours: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /** Called */
            called?: {
                [key: string]: string;
            };
            /** Colours */
            colours: {
                [key: string]: string;
            };
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "take-colours";
        };
        /**
         * TakeOutline
         * @description Take an outline of the designer's own into the file: path data in inches, as a drawing gave it.
         */
        TakeOutline: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "take-outline";
            /** Outline */
            outline: string;
            /** Path */
            path: string;
            /**
             * Replace
             * @default false
             */
            replace: boolean;
        };
        /**
         * TakeSetting
         * @description Lay a section by another map: its lines, how its copies lie, and how often it is laid.
         */
        TakeSetting: {
            /**
             * Across
             * @default 1
             */
            across: number;
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * Down
             * @default 1
             */
            down: number;
            /** Lines */
            lines: string[];
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "take-setting";
            /**
             * Section
             * @default centre
             */
            section: string;
            /**
             * Symmetry
             * @default slide
             * @enum {string}
             */
            symmetry: "slide" | "mirror" | "turn" | "half turn";
        };
        /**
         * TakeView
         * @description The arguments of the act `take-setting`: in about as many rows and columns as the section has.
         */
        TakeView: {
            /** Across */
            across: number;
            /** Down */
            down: number;
            /** Lines */
            lines: string[];
            /** Section */
            section: string;
            /** Symmetry */
            symmetry: string;
        };
        /**
         * TakenPhoto
         * @description A photo that was taken in: the name for the key `photo`, and its points.
         */
        TakenPhoto: {
            /** File */
            file: string;
            /** Height */
            height: number;
            /** Width */
            width: number;
        };
        /**
         * TemplateView
         * @description A page of templates at its true size, as SVG, and what it shows in words.
         */
        TemplateView: {
            /** Alt */
            alt: string;
            /** Number */
            number: number;
            /** Svg */
            svg: string;
        };
        /**
         * TemplatesView
         * @description The pages of templates, and their paper in millimetres.
         */
        TemplatesView: {
            /** Height */
            height: number;
            /** Pages */
            pages: components["schemas"]["TemplateView"][];
            /** Revision */
            revision: number;
            /** Width */
            width: number;
        };
        /**
         * TickOrder
         * @description What is ticked off, by the id of its entry.
         */
        TickOrder: {
            /** Done */
            done: boolean;
            /** Entry */
            entry: string;
            /** Size */
            size?: string | null;
        };
        /**
         * TracingView
         * @description A ring on the web: its box, its outline as it lies there, and its middle, at which the template is laid.
         */
        TracingView: {
            /** Height */
            height: number;
            /** Middle */
            middle: [
                number,
                number
            ];
            /** Number */
            number: number;
            /** Outline */
            outline: string;
            /** Shape */
            shape: string;
            /** Width */
            width: number;
            /** X */
            x: number;
            /** Y */
            y: number;
        };
        /**
         * TrailView
         * @description A curve followed through the top: closed, a circle, or a path with two stops.
         *
         *     `units` are places in `QuiltView.placed`, `numbers` which of each unit's `SeamsView.curves` it runs along.
         */
        TrailView: {
            /** Circle */
            circle: boolean;
            /** Closed */
            closed: boolean;
            /** Length */
            length: string;
            /** Numbers */
            numbers: number[];
            /** Stops */
            stops: string[];
            /** Units */
            units: number[];
        };
        /**
         * TrianglesName
         * @description The triangles round a map on point; squares and the float are empty where they follow from the fit.
         */
        TrianglesName: {
            /** Corner Square */
            corner_square: string;
            /** Corners */
            corners: string;
            /** Fit */
            fit: string;
            /** Float */
            float: string;
            /** Side Square */
            side_square: string;
        };
        /**
         * TurnCells
         * @description Turn what fills some cells so many quarters clockwise.
         */
        TurnCells: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * By
             * @default 1
             */
            by: number;
            /** Cells */
            cells: components["schemas"]["CellAt"][];
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "turn";
        };
        /**
         * UnitView
         * @description A kind of unit at turn 0; `spoken` says what it looks like.
         */
        UnitView: {
            /** Code */
            code: string;
            /** Faces */
            faces: components["schemas"]["FaceView"][];
            /** Height */
            height: number;
            /** Quarter */
            quarter: string;
            /** Spoken */
            spoken: string;
            /** Width */
            width: number;
        };
        /**
         * ValueView
         * @description A key, or a column of rows: which kind of value it is, and between which words there is to choose.
         *
         *     `stated` is what the file says, None where it says nothing; `usual` what stands then, empty where nothing does.
         */
        ValueView: {
            /** Between */
            between: string[];
            /** Columns */
            columns: components["schemas"]["ValueView"][];
            /** Key */
            key: string;
            /** Kind */
            kind: string;
            stated: components["schemas"]["JsonValue"];
            /** Usual */
            usual: string;
        };
        /**
         * ValuesView
         * @description All of the tables, in the order of the file; tables in tables stand by themselves.
         */
        ValuesView: {
            /** Revision */
            revision: number;
            /** Tables */
            tables: components["schemas"]["TableView"][];
        };
        /**
         * WebCentreView
         * @description Equal centres that rings leave: how many, how large, and what of the quilt's own shapes would fit.
         */
        WebCentreView: {
            /** Count */
            count: number;
            disc: components["schemas"]["LengthView"];
            /** Fits */
            fits: [
                string,
                number
            ][];
            height: components["schemas"]["LengthView"];
            /** Shape */
            shape: string;
            width: components["schemas"]["LengthView"];
        };
        /**
         * WebView
         * @description The web as it is unrolled, x across it; of sheets, all of them. `saved` is against plain rows.
         */
        WebView: {
            bought: components["schemas"]["LengthView"];
            bound: components["schemas"]["LengthView"];
            /** Centres */
            centres: components["schemas"]["WebCentreView"][];
            saved: components["schemas"]["LengthView"];
            sheet: components["schemas"]["LengthView"] | null;
            /** Tracings */
            tracings: components["schemas"]["TracingView"][];
            /** Unplaced */
            unplaced: string[];
            used: components["schemas"]["LengthView"];
            width: components["schemas"]["LengthView"];
        };
        /**
         * Write
         * @description Write the whole text: by hand in the page, or as it came from elsewhere. It may be no design.
         */
        Write: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "write";
            /** Text */
            text: string;
        };
        /**
         * WriteOut
         * @description Write a map out with its repeats, so that each place can be painted by itself.
         */
        WriteOut: {
            /**
             * Anyway
             * @default false
             */
            anyway: boolean;
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            name: "write-out";
            /** Section */
            section: string;
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    acts: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ActName"][];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    open_design: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OpenOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Opened"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    design: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PaperView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    act: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ActOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Outcome"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    blocks: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BlocksView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    booklet: {
        parameters: {
            query?: {
                opening?: boolean;
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BookletView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    booklet_page: {
        parameters: {
            query?: {
                width?: number;
                opening?: boolean;
                size?: string | null;
            };
            header?: never;
            path: {
                page: number;
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/png": unknown;
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    close: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    cloth: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClothRoom"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    cutting: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CuttingView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    duplicate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CopyOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Opened"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    figures: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FiguresView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    files: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FilesView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    files_zip: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/zip": unknown;
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    file: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                name: string;
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/octet-stream": unknown;
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    find: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["FindQuestion"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FindView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    cancel_search: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    finder: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FinderView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    look: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LookOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["QuiltView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    making: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MakingView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    tick: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TickOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MakingView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    untick: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MakingView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    news: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": unknown;
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    outline: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/svg+xml": string;
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OutlinesView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    keep: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["KeepOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Outcome"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    palette: {
        parameters: {
            query?: {
                left?: number;
                top?: number;
                width?: number;
                height?: number;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/jpeg": string;
                "image/png": string;
                "image/webp": string;
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PaletteView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    photo: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/jpeg": string;
                "image/png": string;
                "image/webp": string;
            };
        };
        responses: {
            /** @description Successful Response */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TakenPhoto"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    photo_file: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                file: string;
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": unknown;
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    proof: {
        parameters: {
            query?: {
                rehearse?: boolean;
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProofView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    published: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PublishView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    publish: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PublishOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PublishView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    cancel: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PublishView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    quilt: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["QuiltView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    redo: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RevisionOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Outcome"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    rehearsal: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FilmView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    rehearsed: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                step: number;
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FrameView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    rehearsing: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RehearsingView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    rehearse: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RehearsingView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    cancel_rehearsal: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RehearsingView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    save: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SaveOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PaperView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    seams: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SeamsView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    sizes: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SizesView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    templates: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TemplatesView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    undo: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RevisionOrder"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Outcome"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    values: {
        parameters: {
            query?: {
                size?: string | null;
            };
            header?: never;
            path: {
                identity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ValuesView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    folder: {
        parameters: {
            query?: {
                path?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FolderView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    picture: {
        parameters: {
            query?: {
                example?: string | null;
                setting?: string | null;
                recent?: string | null;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": unknown;
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    start: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StartView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
    come_to: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewDesign"];
            };
        };
        responses: {
            /** @description Successful Response */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BegunView"];
                };
            };
            /** @description It is not understood. */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It comes from a stranger. */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is not there. */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It has been changed since, or is in the way. */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It is too large. */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description It cannot be done. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
            /** @description A fault of the program. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Refused"];
                };
            };
        };
    };
}
