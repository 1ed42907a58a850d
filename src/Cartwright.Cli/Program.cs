using Cartwright.Cli;

return CartwrightCommand.Run(args, Console.Out, Console.Error);
