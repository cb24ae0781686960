"""Publishing handouts: MkDocs hooks, scenarios, pictures, the browser bundle, the console."""
