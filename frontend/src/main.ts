import { mount } from "svelte";
import "$/look/tokens.css";
import "$/look/base.css";
import "$/look/light.svelte";
import "$/api/client"; // takes the token out of the address before anything reads it
import App from "./App.svelte";

const room = document.getElementById("room");
if (room) mount(App, { target: room });
