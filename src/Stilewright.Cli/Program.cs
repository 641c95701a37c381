using Stilewright.Cli;

return CommandLine.Run(args);
