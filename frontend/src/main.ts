import { mount } from "svelte";
import "$/look/tokens.css";
import "$/look/base.css";
import "$/look/light.svelte";
import App from "./App.svelte";

const room = document.getElementById("room");
if (room) mount(App, { target: room });
