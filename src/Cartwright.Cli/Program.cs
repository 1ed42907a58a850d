System.Console.WriteLine("cartwright");
