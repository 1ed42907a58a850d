// Builds every example cart through the aliases; `build.cake` packs them first, and says where they are.

#addin nuget:?package=Cartwright.Cake

Task("Examples")
    .DoesForEach(() => GetFiles("../examples/*/cart.json"), manifest =>
    {
        if (!CartBuild(manifest).Output.WasThere)
        {
            throw new CakeException($"{manifest}: the aliases and the native command make different files.");
        }
    })
    .DeferOnError();

RunTarget("Examples");
