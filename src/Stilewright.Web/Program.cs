using Spectre.Console.Cli;
using Stilewright.Web.Serving;

var app = new CommandApp<ServeCommand>();
app.Configure(configure =>
{
    configure.SetApplicationName("stilewright-web");
    configure.AddCommand<ServeCommand>("serve").WithDescription("Shows the application in a browser. This is what happens without a verb.");
    configure.AddCommand<BackUpCommand>("back-up").WithDescription("Copies the data file while the application may be running.")
        .WithExample("back-up", "--data", "stilewright.db", "--out", "copy.db");
    configure.SetExceptionHandler((exception, _) => Refusal.Tell(exception));
    configure.Settings.StrictParsing = true;
});
return await app.RunAsync(args);
